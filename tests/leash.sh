#!/bin/sh
# leash.sh PROGRAM [ARGUMENT]...: runs a program that ends, with all that it started, when whoever started this ends.
#
# The caller gives this a process group of its own and holds the other end of its standard input. When that end
# closes, however the caller ended, every process of the group is killed. What the program leaves running when it
# ends by itself is the caller's to kill, by the group.
exec 3<&0 </dev/null
"$@" 3<&- &
program=$!
{
  while read -r _; do :; done
  kill -KILL 0
} <&3 >/dev/null 2>&1 &
exec 3<&-
wait "$program"
