/** What reads and writes the rack as a table is large, and few need it. */
export const rackTables = () => import('../../../../core/src/file/rackCsv.ts');
