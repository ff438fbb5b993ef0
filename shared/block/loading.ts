/** What a cell shows while the sheet still works it out. */
export const LOADING = 'Loading...';
