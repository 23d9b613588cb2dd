package org.frisket.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.frisket.geometry.Monitor;
import org.frisket.typography.index.FontIndex;
import org.frisket.typography.index.FontIndexer;
import org.frisket.typography.index.FontQuery;
import org.frisket.typography.index.IndexedFont;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FolderFontSource;
import org.frisket.typography.source.FontEntry;

/** Indexing a studio's fonts, for the first time and again, against merely reading the files; and searching them. */
final class FontIndexBenchmark {

	private static final int FONTS = 500;
	private static final int SEARCHED = 2_000;

	private FontIndexBenchmark() {
	}

	static void run() throws Exception {
		Path folder = Files.createTempDirectory("benchmark");
		try {
			measure(makeFonts(Files.createDirectory(folder.resolve("fonts"))), folder.resolve("memory"));
		} finally {
			try (Stream<Path> all = Files.walk(folder)) {
				for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
					Files.delete(each);
				}
			}
		}
	}

	/** Those of the product, each in many files of contents of their own. */
	private static Path makeFonts(Path folder) throws Exception {
		List<FontEntry> fonts = new EmbeddedFontSource().fonts(Monitor.NONE);
		for (int i = 0; i < FONTS; i++) {
			byte[] font = fonts.get(i % fonts.size()).open().bytes();
			byte[] marked = Arrays.copyOf(font, font.length + Integer.BYTES);
			marked[font.length] = (byte) i;
			marked[font.length + 1] = (byte) (i >> Byte.SIZE);
			Files.write(folder.resolve("%03d.ttf".formatted(i)), marked);
		}
		return folder;
	}

	private static void measure(Path fonts, Path memory) throws IOException {
		// once before, so that none of them waits for the disk
		read(fonts);
		double bare = seconds(() -> read(fonts));
		double cold = seconds(() -> index(fonts, memory));
		double warm = seconds(() -> index(fonts, memory));
		System.out.printf("index of %d fonts: cold %.2f s, %.1f times a bare read of the files (%.3f s); again %.3f s, "
				+ "%.2f times%n", FONTS, cold, cold / bare, bare, warm, warm / bare);
		List<IndexedFont> all = new ArrayList<>();
		FontIndex index = index(fonts, memory);
		while (all.size() < SEARCHED) {
			all.addAll(index.fonts());
		}
		FontIndex many = new FontIndex(all, List.of());
		double[] ms = Stopwatch.medians(() -> many.search(FontQuery.named("lib ser").withCharacters("Harbour Lane")),
				() -> all.stream().filter(font -> font.entry().place().contains("lib ser")).toList());
		System.out.printf("search of %d fonts by words and characters: %.2f ms (goal 100), %.0f times a look at each name "
				+ "(%.3f ms)%n", all.size(), ms[0], ms[0] / ms[1], ms[1]);
	}

	private interface Work {
		Object run() throws IOException;
	}

	private static double seconds(Work work) throws IOException {
		long start = System.nanoTime();
		Stopwatch.sink = work.run();
		return (System.nanoTime() - start) / 1e9;
	}

	private static Long read(Path fonts) throws IOException {
		long bytes = 0;
		try (Stream<Path> files = Files.list(fonts)) {
			for (Path file : files.toList()) {
				bytes += Files.readAllBytes(file).length;
			}
		}
		return bytes;
	}

	/** As in a process of its own: nothing is known but what stands in the memory. */
	private static FontIndex index(Path fonts, Path memory) {
		return FontIndexer.rememberingIn(memory).index(List.of(new FolderFontSource("benchmark", fonts)), Monitor.NONE);
	}
}
