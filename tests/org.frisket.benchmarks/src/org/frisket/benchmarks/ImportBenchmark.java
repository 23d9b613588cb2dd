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

	private ImportBenchmark() {
	}

	static void run() throws Exception {
		byte[] file = file();
		ImportSource source = ImportSource.of("large.svg", file);
		ImportTask task = new ImportTask(Importers.forFile("large.svg").orElseThrow());
		double[] ms = Stopwatch.mediansOfFew(() -> read(task, source), () -> parsed(file));
		double mb = file.length / 1e6;
		System.out.printf("import of an SVG file of %.1f MB: %.0f ms, %.1f MB/s; XML alone %.0f ms, %.1f MB/s; ratio %.2f%n", mb,
				ms[0], 1000 * mb / ms[0], ms[1], 1000 * mb / ms[1], ms[0] / ms[1]);
	}

	private static ImportedArt read(ImportTask task, ImportSource source) {
		try {
			return task.read(source, Map.of(), Monitor.NONE);
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

	private static byte[] file() {
		StringBuilder text = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='900mm'>\n");
		List<Contour> crowd = Flattened.crowd(3_000);
		for (int i = 0; text.length() < SIZE; i++) {
			Contour contour = crowd.get(i % crowd.size());
			text.append("<path fill='#204060' transform='translate(").append(i % 7).append(")' d='")
					.append(PathData.format(Outline.of(contour))).append("'/>\n");
		}
		return text.append("</svg>").toString().getBytes(StandardCharsets.UTF_8);
	}
}
