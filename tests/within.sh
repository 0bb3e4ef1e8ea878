#!/bin/sh
# Runs a program in another root, with this system's devices, processes and display: within.sh ROOT PROGRAM [ARGUMENT...]
# What is shown there is shown to that program alone and ends with it, so nobody who clears the root clears this system.
set -eu
if [ "${SHOWN_WITHIN:-}" != yes ]; then
  SHOWN_WITHIN=yes exec unshare --mount --propagation private sh "$0" "$@"
fi
unset SHOWN_WITHIN
root=$1
shift
for part in proc dev dev/shm tmp; do
  mount --bind "/$part" "$root/$part"
done
exec chroot "$root" "$@"
