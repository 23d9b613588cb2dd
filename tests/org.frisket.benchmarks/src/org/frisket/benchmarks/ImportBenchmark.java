package org.frisket.benchmarks;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportTask;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.Importers;
import org.frisket.imports.UnreadableArtException;
import org.frisket.prepare.extension.ContributionException;

/** A large SVG file taken in, against the bare parsing of its XML. */
final class ImportBenchmark {

	private static final int SIZE = 10 << 20;
	private static final int LAYER = 40;
	private static final int COLOURS = 30;

	private ImportBenchmark() {
	}

	/** Half the file beside the whole one: the time is to grow as the file does. Garbage is collected by other threads. */
	static void run() throws Exception {
		ImportTask task = new ImportTask(Importers.forFile("large.svg").orElseThrow());
		byte[] half = file(SIZE / 2);
		byte[] whole = file(SIZE);
		double[] ms = Stopwatch.cpu(false, () -> read(task, half), () -> read(task, whole), () -> parsed(whole));
		double mb = whole.length / 1e6;
		System.out.printf("import of an SVG file of %.1f MB: %.0f ms, %.1f MB/s; XML alone %.0f ms, %.1f MB/s; ratio %.2f%n", mb,
				ms[1], 1000 * mb / ms[1], ms[2], 1000 * mb / ms[2], ms[1] / ms[2]);
		System.out.printf("  of half of it: %.0f ms; grows by %.2f for twice the size%n", ms[0], ms[1] / ms[0]);
	}

	private static ImportedArt read(ImportTask task, byte[] file) {
		try {
			return task.read(ImportSource.of("large.svg", file), Map.of(), Monitor.NONE);
		} catch (IOException | UnreadableArtException | ContributionException e) {
			throw new IllegalStateException(e);
		}
	}

	private static int parsed(byte[] file) {
		try {
			XMLStreamReader reader = XMLInputFactory.newDefaultFactory()
					.createXMLStreamReader(new ByteArrayInputStream(file));
			int read = 0;
			while (reader.hasNext()) {
				reader.next();
				for (int i = reader.isStartElement() ? reader.getAttributeCount() : 0; i > 0; i--) {
					read += reader.getAttributeValue(i - 1).length();
				}
			}
			return read;
		} catch (XMLStreamException e) {
			throw new IllegalStateException(e);
		}
	}

	/** Small filled paths as drawing programs write them: in groups, with ids, by attributes and by styles. */
	private static byte[] file(int size) {
		StringBuilder text = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='900mm'>\n");
		List<Contour> crowd = Flattened.crowd(3_000);
		for (int i = 0; text.length() < size; i++) {
			if (i % LAYER == 0) {
				text.append(i == 0 ? "" : "</g>\n").append("<g id='layer").append(i / LAYER)
						.append("' style='fill-rule:evenodd;stroke:none' transform='translate(").append(i % 7).append(")'>\n");
			}
			String colour = String.format("#%06x", i % COLOURS * 0x080503);
			text.append("<path id='path").append(i)
					.append(i % 3 == 0 ? "' fill='" + colour : "' style='fill:" + colour + ";fill-opacity:1;stroke:none")
					.append("' d='").append(PathData.format(Outline.of(crowd.get(i % crowd.size())), 3)).append("'/>\n");
		}
		return text.append("</g></svg>").toString().getBytes(StandardCharsets.UTF_8);
	}
}
