import openEngine, {
  TypstCompilerBuilder,
  TypstFontResolverBuilder,
} from '@myriaddreamin/typst-ts-web-compiler';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { typeThatFits } from '../../documents/sheets/type-that-fits.ts';
import { TYPST_SOURCE } from '../../documents/sheets/typst-source.ts';

/** Sets a sheet: tagged PDF with its fonts in it. */
export type Typesetter = (sheet: SheetOfPaper) => Uint8Array<ArrayBuffer>;

const ENGINE = new URL(
  '../../../node_modules/@myriaddreamin/typst-ts-web-compiler/pkg/typst_ts_web_compiler_bg.wasm',
  import.meta.url,
);
const FONTS = [
  new URL(
    '../../../node_modules/@expo-google-fonts/atkinson-hyperlegible/400Regular/AtkinsonHyperlegible_400Regular.ttf',
    import.meta.url,
  ),
  new URL(
    '../../../node_modules/@expo-google-fonts/atkinson-hyperlegible/700Bold/AtkinsonHyperlegible_700Bold.ttf',
    import.meta.url,
  ),
];

const MAIN = '/sheet.typ';
/** One line for each thing that the engine complains of. */
const LINES = 2;

/** The same engine as the command's, fetched and compiled for this browser: to be opened where it is needed only. */
export async function openTypesetter(): Promise<Typesetter> {
  await openEngine({ module_or_path: fetch(ENGINE) });
  const fonts = new TypstFontResolverBuilder();
  for (const font of FONTS) fonts.add_raw_font(new Uint8Array(await bytesOf(font)));
  const builder = withoutFiles(() => {
    const made = new TypstCompilerBuilder();
    made.set_dummy_access_model();
    return made;
  });
  const compiler = await builder.build();
  compiler.set_fonts(await fonts.build());
  compiler.add_source(MAIN, TYPST_SOURCE);
  return (sheet) => {
    const at = (share: number) => [
      ['sheet', JSON.stringify(sheet)],
      ['share', String(share)],
    ];
    const sidesAt = (share: number): number =>
      (JSON.parse(compiler.query(MAIN, at(share), '<side>')) as readonly unknown[]).length;
    const share = typeThatFits(sheet, sidesAt);
    const { result, diagnostics } = compiler.compile(MAIN, at(share), 'pdf', LINES);
    if (!(result instanceof Uint8Array)) throw new Error(`${sheet.name}: ${String(diagnostics)}`);
    return new Uint8Array(result);
  };
}

/**
 * The engine makes its stand-ins for files and packages, of which a sheet has none, out of text, as a strict page lets
 * nobody do: while it does, it gets functions that were made here.
 */
function withoutFiles<T>(make: () => T): T {
  const made = globalThis.Function;
  const refusal = () => () => {
    throw new Error('a sheet has no files');
  };
  globalThis.Function = new Proxy(made, { construct: refusal, apply: refusal });
  try {
    return make();
  } finally {
    globalThis.Function = made;
  }
}

async function bytesOf(address: URL): Promise<ArrayBuffer> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address.href}: ${answer.status}`);
  return answer.arrayBuffer();
}
