/** Whether the page has a control for this field of a request. */
export function isReachable(field: string | null): field is string {
  return field !== null && document.getElementById(`field-${field}`) !== null;
}

/** Takes the maker to the control of a field. */
export function reach(field: string): void {
  const control = document.getElementById(`field-${field}`);
  // A field that is folded away cannot take the focus.
  for (let fold = control?.closest("details"); fold; fold = fold.parentElement?.closest("details")) fold.open = true;
  control?.focus();
  control?.scrollIntoView({ block: "center" });
}
