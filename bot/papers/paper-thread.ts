import { fontFiles } from '../pictures/fonts.ts';
import { serve } from '../threads/serve.ts';
import type { PaperOrder } from './write-paper.ts';

// The thread that writes papers. The PDF library takes a tenth of a second to load: here nobody waits for it.

serve<PaperOrder>(async () => {
  const { paperWriter } = await import('./write-paper.ts');
  return paperWriter(fontFiles());
});
