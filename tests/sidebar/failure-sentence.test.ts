/** Every way a call can fail ends in a sentence that says what to do. */
import { describe, expect, test } from 'vitest';
import { failureSentence } from '../../src/sidebar/failure-sentence';

const ONLINE = { writes: false, online: true };

describe('failureSentence', () => {
  // Error texts: public issue threads on Apps Script sidebars and Google's troubleshooting page; some from memory.
  test.each([
    ['PERMISSION_DENIED: reading from storage', /private \(incognito\) window/],
    ['NetworkError: Connection failure due to HTTP 0', /connection .* was lost/i],
    ['Exceeded maximum execution time', /took too long/],
    ['Script function not found: answerSidebar', /different versions/],
    ['Authorization is required to perform that action.', /allow the script/],
    ['You are trying to edit a protected cell or object.', /protected/],
    ["We're sorry, a server error occurred. Please wait a bit and try again.", /Wait a little/],
    ['Service invoked too many times for one day: spreadsheets', /Too many calls/],
    ['No spreadsheet', /only beside a spreadsheet/],
    ['No answer in time', /has not answered/],
    ['something nobody foresaw', /“something nobody foresaw”/],
    ['', /without saying why/],
  ])('%s', (message, told) => {
    expect(failureSentence(new Error(message), ONLINE)).toMatch(told);
  });

  test('offline counts before anything else', () => {
    expect(failureSentence(new Error('x'), { writes: false, online: false })).toMatch(/connection/);
  });

  test('a write that may have gone through says so', () => {
    const writing = { writes: true, online: true };
    expect(failureSentence(new Error('No answer in time'), writing)).toMatch(/Look at the sheet first/);
    expect(failureSentence(new Error('NetworkError'), writing)).toMatch(/Look at the sheet first/);
    expect(failureSentence(new Error('protected'), writing)).not.toMatch(/Look at the sheet first/);
  });

  test('a call that came back before the script ran has written nothing, and reading never writes', () => {
    expect(failureSentence(new Error('PERMISSION_DENIED'), { writes: true, online: true })).toMatch(
      /Nothing was written\.$/,
    );
    expect(failureSentence(new Error('No answer in time'), ONLINE)).toMatch(/Nothing was written\.$/);
  });

  test('a write that Google stopped in the middle may have been made', () => {
    const writing = { writes: true, online: true };
    expect(failureSentence(new Error('Exceeded maximum execution time'), writing)).toMatch(
      /Look at the sheet first/,
    );
  });

  test('a full stop of the message is not put twice', () => {
    const told = failureSentence(new Error('Something nobody foresaw.'), ONLINE);
    expect(told).toContain('“Something nobody foresaw”.');
    expect(told).not.toMatch(/\.[”)]?\./);
  });

  test('an error that is no Error is read too', () => {
    expect(failureSentence({ message: 'PERMISSION_DENIED' }, ONLINE)).toMatch(/accounts/);
    expect(failureSentence('PERMISSION_DENIED', ONLINE)).toMatch(/accounts/);
    expect(failureSentence(undefined, ONLINE)).toMatch(/without saying why/);
  });
});
