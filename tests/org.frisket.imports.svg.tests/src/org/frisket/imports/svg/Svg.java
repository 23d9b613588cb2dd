package org.frisket.imports.svg;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.UnreadableArtException;

/** Small SVG files and what is read from them. */
final class Svg {

	private Svg() {
	}

	/** A sheet of 100 mm a side with a unit for each mm. */
	static String sheet(String content) {
		return "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='100mm' "
				+ "height='100mm' viewBox='0 0 100 100'>" + content + "</svg>";
	}

	static ImportedArt read(String text, String... options) throws IOException, UnreadableArtException {
		return read(text.getBytes(StandardCharsets.UTF_8), options);
	}

	/** @param options names and values in turn */
	static ImportedArt read(byte[] bytes, String... options) throws IOException, UnreadableArtException {
		SvgImporter importer = new SvgImporter();
		Map<String, String> texts = options.length == 0 ? Map.of()
				: options.length == 2 ? Map.of(options[0], options[1])
						: Map.of(options[0], options[1], options[2], options[3]);
		return importer.read(ImportSource.of("leaf.svg", bytes), OptionValues.of(importer.options(), texts), Monitor.NONE);
	}

	static List<ImportedShape> shapes(ImportedArt art) {
		return art.layers().stream().flatMap(layer -> layer.shapes().stream()).toList();
	}
}
