/** Whether a store's address is that of a database, which several processes can share. */
export const isShared = (url: string): boolean => /^postgres(?:ql)?:/.test(url);
