package org.frisket.export.tests;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportTask;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Importers;
import org.frisket.prepare.extension.ContributionException;

/** Files of one ending: written, and read back by the suite's own importer. */
public record Format(String ending) {

	public Exporter exporter() {
		try {
			return Exporters.forFile("x." + ending).orElseThrow().create();
		} catch (ContributionException e) {
			throw new AssertionError(e);
		}
	}

	public byte[] bytes(Handoff handoff, Map<String, String> options) throws IOException {
		Exporter exporter = exporter();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		exporter.export(handoff, OptionValues.of(exporter.options(), options), Monitor.NONE, out);
		return out.toByteArray();
	}

	public String text(Handoff handoff, Map<String, String> options) throws IOException {
		return new String(bytes(handoff, options), StandardCharsets.US_ASCII);
	}

	public List<ImportedLayer> readBack(byte[] bytes, Map<String, String> options) throws Exception {
		return new ImportTask(Importers.forFile("x." + ending).orElseThrow())
				.read(ImportSource.of("x." + ending, bytes), options, Monitor.NONE).layers();
	}

	/** Of all lines together, in mm. */
	public static double length(List<ImportedLayer> layers) {
		return layers.stream().flatMap(layer -> layer.shapes().stream()).map(ImportedShape.Lines.class::cast)
				.flatMap(lines -> lines.outline().contours().stream()).mapToDouble(contour -> contour.length()).sum();
	}
}
