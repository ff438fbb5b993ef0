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
