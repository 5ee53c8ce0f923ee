/** Not given means that the key is absent. */
export function put<T extends object, Key extends keyof T>(row: T, key: Key, value: T[Key] | undefined): void {
  if (value === undefined) Reflect.deleteProperty(row, key);
  else row[key] = value;
}
