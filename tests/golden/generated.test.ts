import { GENERATED, isFresh } from '../../src/build/generated';

test.each(GENERATED.map((file) => [file.path, file] as const))(
  '%s is what the code gives; npm run gen refreshes it',
  (_path, file) => {
    expect(isFresh(file)).toBe(true);
  },
);
