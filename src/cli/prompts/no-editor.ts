/** Stands in for inquirer's external editor, which no prompt of a call opens (rolldown.config.js says why). Always rejects. */
export async function editAsync(): Promise<never> {
  throw new Error('no prompt of a call opens an editor');
}
