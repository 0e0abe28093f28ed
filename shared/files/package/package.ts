// Long: one class over the parts of a package.
import { runNow } from '../../base/steps';
import { pack, readContainer, unpack } from './container';
import type { ZipEntry } from './container';
import { writeContainer } from './archive';

import { splice, cut, put } from './splice';
import type { Edit } from './splice';
import type { Element } from './xml';
import { all, attribute, checkEncoding, parseXml, rawText } from './xml';
import { escapeXml } from '../text';

export interface PartRelation {
  readonly id: string;
  /**
   * Last word of the type: worksheet, sharedStrings, webextension. Strict and usual files differ only before
   * it.
   */
  readonly type: string;
  /** Part name, or the address when it lies outside the file. */
  readonly target: string;
  readonly isExternal: boolean;
  readonly element: Element;
}

const folderOf = (part: string): string => part.slice(0, part.lastIndexOf('/') + 1);
export const relationsPart = (part: string): string =>
  `${folderOf(part)}_rels/${part.slice(part.lastIndexOf('/') + 1)}.rels`;
const sourceOf = (relations: string): string => relations.replace(/_rels\/([^/]*)\.rels$/, '$1');

function resolve(base: string, target: string): string {
  const path: string[] = [];
  for (const step of (target.startsWith('/') ? target : folderOf(base) + target).split('/')) {
    if (step === '..') path.pop();
    else if (step !== '.' && step !== '') path.push(step);
  }
  return path.join('/');
}

/** The parts of one workbook: read whole, changed one by one, written back with everything else as it was. */
export class Package {
  private readonly entries = new Map<string, ZipEntry>();
  private readonly contents = new Map<string, Uint8Array>();
  private readonly changed = new Map<string, { readonly name: string; readonly bytes: Uint8Array }>();
  private readonly removed = new Set<string>();
  private readonly types = new Map<string, string>();
  /** Relations as last read, by the part they belong to. */
  private readonly known = new Map<
    string,
    { readonly bytes: Uint8Array; readonly list: readonly PartRelation[] }
  >();

  /** Unpacks and checks every part, yielding the share done. */
  static *open(file: Uint8Array): Generator<number, Package> {
    const found = new Package();
    const entries = readContainer(file);
    const total = entries.reduce((sum, entry) => sum + entry.size, 1);
    let done = 0;
    for (const entry of entries) {
      const steps = unpack(entry);
      let step = steps.next();
      for (; !step.done; step = steps.next()) yield (done + step.value) / total;
      done += entry.size;
      found.entries.set(entry.name.toLowerCase(), entry);
      if (/\.(xml|rels|vml)$|^mimetype$/i.test(entry.name))
        found.contents.set(entry.name.toLowerCase(), step.value);
      yield done / total;
    }
    return found;
  }

  get names(): string[] {
    const kept = [...this.entries.values()]
      .map((entry) => entry.name)
      .filter((name) => !this.removed.has(name.toLowerCase()));
    return [
      ...kept,
      ...[...this.changed.values()]
        .map((part) => part.name)
        .filter((name) => !this.entries.has(name.toLowerCase())),
    ];
  }
  has(part: string): boolean {
    return (
      !this.removed.has(part.toLowerCase()) &&
      (this.changed.has(part.toLowerCase()) || this.entries.has(part.toLowerCase()))
    );
  }
  /** Is the name free, also of parts that were just removed? */
  isFree(part: string): boolean {
    return !this.has(part) && !this.entries.has(part.toLowerCase());
  }

  /** The text of a part as it is now. */
  read(part: string): Uint8Array | undefined {
    const key = part.toLowerCase();
    return this.removed.has(key) ? undefined : (this.changed.get(key)?.bytes ?? this.contents.get(key));
  }
  /** A part of any kind, unpacked; undefined for one that was changed or is gone. */
  raw(part: string): Uint8Array | undefined {
    const known = this.read(part);
    const entry = this.entries.get(part.toLowerCase());
    return known ?? (entry && !this.removed.has(part.toLowerCase()) ? runNow(unpack(entry)) : undefined);
  }
  get isOpenDocument(): boolean {
    return this.text('mimetype')?.includes('opendocument') ?? false;
  }
  /** A part as text, for the few that are read as such. */
  text(part: string): string | undefined {
    const bytes = this.read(part);
    if (!bytes) return undefined;
    checkEncoding(bytes, part);
    return rawText(bytes, 0, bytes.length);
  }
  tree(part: string): { readonly bytes: Uint8Array; readonly root: Element } | undefined {
    const bytes = this.read(part);
    return bytes && { bytes, root: parseXml(bytes, part) };
  }
  write(part: string, bytes: Uint8Array): void {
    this.changed.set(part.toLowerCase(), { name: part, bytes });
    this.removed.delete(part.toLowerCase());
  }
  edit(part: string, edits: readonly Edit[]): void {
    const bytes = this.read(part);
    if (bytes && edits.length > 0) this.write(part, splice(bytes, edits));
  }
  remove(part: string): void {
    this.removed.add(part.toLowerCase());
    this.removed.add(relationsPart(part).toLowerCase());
  }
  /** Adds a part and says what it is. */
  add(part: string, bytes: Uint8Array, contentType: string): void {
    this.write(part, bytes);
    this.types.set(part, contentType);
  }

  relations(part: string): readonly PartRelation[] {
    const bytes = this.read(relationsPart(part));
    if (!bytes) return [];
    const known = this.known.get(part);
    if (known?.bytes === bytes) return known.list;
    const list = this.readRelations(part, bytes);
    this.known.set(part, { bytes, list });
    return list;
  }
  private readRelations(part: string, bytes: Uint8Array): PartRelation[] {
    const root = parseXml(bytes, relationsPart(part));
    const text = (element: Element, name: string): string => attribute(bytes, element, name)?.value ?? '';
    return all(root, 'Relationship').map((element) => {
      const isExternal = text(element, 'TargetMode') === 'External';
      const target = text(element, 'Target');
      return {
        id: text(element, 'Id'),
        type: text(element, 'Type').replace(/^.*\//, ''),
        isExternal,
        target: isExternal ? target : this.located(resolve(part, target)),
        element,
      };
    });
  }
  /** Some writers spell a blank in a name as %20 in the relation and as itself in the archive. */
  private located(target: string): string {
    if (!target.includes('%') || this.entries.has(target.toLowerCase())) return target;
    try {
      const plain = decodeURIComponent(target);
      return this.entries.has(plain.toLowerCase()) ? plain : target;
    } catch {
      return target;
    }
  }
  related(part: string, type: string): PartRelation | undefined {
    return this.relations(part).find((relation) => relation.type === type && !relation.isExternal);
  }

  /** Type of a part, '' when the file does not say. */
  contentType(part: string): string {
    const found = this.tree('[Content_Types].xml');
    if (!found) return '';
    const value = (element: Element, name: string): string =>
      attribute(found.bytes, element, name)?.value ?? '';
    const override = all(found.root, 'Override').find(
      (one) => value(one, 'PartName').replace(/^\//, '').toLowerCase() === part.toLowerCase(),
    );
    const byEnding = all(found.root, 'Default').find((one) =>
      part.toLowerCase().endsWith(`.${value(one, 'Extension').toLowerCase()}`),
    );
    return override ? value(override, 'ContentType') : byEnding ? value(byEnding, 'ContentType') : '';
  }

  /** Every part that relations lead to from the start of the file, with the words of the relations that do. */
  reached(): readonly { readonly part: string; readonly types: ReadonlySet<string> }[] {
    const seen = new Map<string, { readonly part: string; readonly types: Set<string> }>();
    const queue = [''];
    for (let part = queue.pop(); part !== undefined; part = queue.pop()) {
      for (const { isExternal, target, type } of this.relations(part)) {
        const key = target.toLowerCase();
        if (isExternal || !this.has(target)) continue;
        const known = seen.get(key);
        if (known) known.types.add(type);
        else {
          seen.set(key, { part: target, types: new Set([type]) });
          queue.push(target);
        }
      }
    }
    return [...seen.values()];
  }
  partsOfType(...types: readonly string[]): string[] {
    return this.reached()
      .filter((one) => types.some((type) => one.types.has(type)))
      .map(({ part }) => part);
  }

  /**
   * Removes what no relation leads to and every mention of what is gone. Gives the parts that nothing led to
   * from the start.
   */
  tidy(before: ReadonlySet<string>): string[] {
    this.cutRelations();
    const now = new Set(this.reached().map(({ part }) => part.toLowerCase()));
    const stray: string[] = [];
    for (const name of this.names) {
      const key = name.toLowerCase();
      const owner = /(^|\/)_rels\/[^/]*\.rels$/.test(key) ? sourceOf(key) : key;
      if (owner === '' || now.has(owner) || key === '[content_types].xml') continue;
      if (!before.has(owner)) stray.push(name);
      this.remove(name);
    }
    this.cutRelations();
    this.listTypes();
    return stray;
  }

  private listTypes(): void {
    const found = this.tree('[Content_Types].xml');
    if (!found) return;
    const { bytes, root } = found;
    const edits = all(root, 'Override')
      .filter((one) => {
        const name = (attribute(bytes, one, 'PartName')?.value ?? '').replace(/^\//, '').toLowerCase();
        return this.removed.has(name) && this.entries.has(name);
      })
      .map(cut);
    for (const [part, type] of this.types)
      edits.push(
        put(
          root.closeStart,
          root.closeStart,
          `<${root.prefix}Override PartName="/${escapeXml(part)}" ContentType="${escapeXml(type)}"/>`,
        ),
      );
    this.types.clear();
    this.edit('[Content_Types].xml', edits);
  }

  private cutRelations(): void {
    for (const name of this.names.filter((one) => /(^|\/)_rels\/[^/]*\.rels$/i.test(one))) {
      const gone = this.relations(sourceOf(name)).filter(
        (relation) => !relation.isExternal && this.removed.has(relation.target.toLowerCase()),
      );
      this.edit(
        name,
        gone.map((relation) => cut(relation.element)),
      );
    }
  }

  get isChanged(): boolean {
    return this.changed.size > 0 || [...this.removed].some((name) => this.entries.has(name));
  }

  *save(level?: 1 | 6): Generator<number, Uint8Array> {
    const out: ZipEntry[] = [];
    const total = [...this.changed.values()].reduce((sum, part) => sum + part.bytes.length, 1);
    let done = 0;
    for (const name of this.names) {
      const old = this.entries.get(name.toLowerCase());
      const part = this.changed.get(name.toLowerCase());
      if (part) {
        const steps = pack(old?.name ?? part.name, part.bytes, level, old);
        let step = steps.next();
        for (; !step.done; step = steps.next()) yield (done + step.value) / total;
        done += part.bytes.length;
        out.push(step.value);
      } else if (old) out.push(old);
      yield done / total;
    }
    return writeContainer(out);
  }
}
