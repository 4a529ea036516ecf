import { defineConfig } from "vitest/config";

const door = (name: string, file: string): { find: RegExp; replacement: string } => ({
  find: new RegExp(`^${name}$`),
  replacement: new URL(file, import.meta.url).pathname,
});

// Tests and examples import the package by its name; here that is the source, so that no build is needed.
const alias = [
  door("sprigwright", "src/index.ts"),
  door("sprigwright/artwork", "src/artwork.ts"),
  door("sprigwright/lettering", "src/lettering.ts"),
  door("sprigwright/print", "src/print.ts"),
  door("sprigwright/proof", "src/proof.ts"),
  door("sprigwright/node", "src/node.ts"),
];

export default defineConfig({
  test: {
    // Vitest leaves one core free by default, which is half of a machine of two.
    maxWorkers: 2,
    projects: [
      {
        resolve: { alias },
        test: {
          name: "source",
          // Tests change nothing that others read, so one worker loads the library once for all its files.
          isolate: false,
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/package/**"],
          testTimeout: 60_000,
        },
      },
      {
        // What is shipped: built once before, packed, installed and used as a stranger would.
        test: {
          name: "package",
          include: ["tests/package/**/*.test.ts"],
          globalSetup: ["tests/package/build.ts"],
          testTimeout: 120_000,
          hookTimeout: 240_000,
        },
      },
    ],
  },
});
