/**
 * Everything that opens the replicated documents behind plans. It weighs as much as the rest of the first page's code together and the first page shows only
 * rows, so it is fetched from the phone's own store when the first plan is opened.
 */
export { encodeDocument } from '../../device/database/document-bytes.ts'
export { documentFrom, documentFromOutside, readPlan, readRaw } from '../../device/database/plan-document.ts'
export { adoptDocument, beginSession, openSession } from '../../device/database/plan-session.ts'
export { forOthers } from '../../device/sharing/privacy.ts'
export { readChosenFile, writeBackups, writeChangesFile, writePlanFile } from '../../device/sharing/plan-file.ts'
export { withReceipts } from '../../device/sharing/receipt-files.ts'
