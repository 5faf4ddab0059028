import type { BackupPlan } from './book/backup.ts';
import type { Config } from './config.ts';
import { backupFolder } from './console/local.ts';

/** Where the daily backups go: beside the books, two weeks of them, from three in the morning on, unless set otherwise. */
export const backupPlan = ({
  storeUrl,
  backupDir,
  backupKeep = 14,
  backupHour = 3,
}: Config): BackupPlan | undefined =>
  backupDir === 'none'
    ? undefined
    : { folder: backupDir ?? backupFolder(storeUrl), keep: backupKeep, hour: backupHour };
