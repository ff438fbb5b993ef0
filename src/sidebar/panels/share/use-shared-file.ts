import { useEffect, useState } from 'preact/hooks';
import { type BlockContent, cutBlock } from '../../../../shared/block/read-block';
import { unnamedTables } from '../../../../shared/tasks/share/unnamed-tables';
import { type Book, readBook } from '../../parts/use-book';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';

/** Our own tables in the file, and the mark that the file would carry as an original. */
export interface SharedFile {
  readonly book: Book;
  readonly file: Book['overview'] & { readonly title: string };
  readonly contents: readonly BlockContent[];
  /** Tabs with tables of ours that are not looked at: of an earlier season, or copied. */
  readonly unnamed: readonly string[];
  readonly mark: string;
}

export function useSharedFile() {
  const [shared, setShared] = useState<SharedFile>();
  const work = useWork();
  const read = (): void => work.start(async () => setShared(await readSharedFile()));
  useEffect(read, []);
  return { ...work, shared, read };
}

async function readSharedFile(): Promise<SharedFile> {
  const book = await readBook();
  const { overview, tabs } = book;
  const contents = overview.blocks.flatMap((info) => {
    const tab = tabs.find(({ name }) => name === info.tab);
    return tab ? [cutBlock(tab, info)] : [];
  });
  const { mark, title } = await ask('fileMark', {});
  const unnamed = unnamedTables(tabs, new Set(overview.blocks.map(({ tab }) => tab)));
  return { book, file: { ...overview, title }, contents, unnamed, mark };
}
