import type { FrameLocator, Page } from 'playwright-core';

/** Waits until the plan that comes by itself is there and nothing is being looked for any more. */
export async function planned(sidebar: Page | FrameLocator, timeout = 60_000): Promise<void> {
  await sidebar.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
  await sidebar.getByRole('heading', { name: 'Next moves' }).waitFor({ timeout });
  await sidebar
    .getByText(/^(Working it out…|Looking for what would make it better…)$/)
    .first()
    .waitFor({ state: 'hidden', timeout });
}

/** Opens the task, waits for its plan and writes the table onto a new tab. */
export async function writeMoves(sidebar: Page | FrameLocator): Promise<void> {
  await sidebar.getByRole('button', { name: 'Plan the moves' }).click();
  await planned(sidebar);
  await sidebar.getByRole('button', { name: 'Write the table', exact: true }).click();
  await sidebar
    .getByText(/Written on/)
    .first()
    .waitFor({ timeout: 60_000 });
}
