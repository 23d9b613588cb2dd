package org.frisket.imports.dxf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.UnreadableArtException;

/** Small DXF files, written as words: group codes and values in turn. */
final class Dxf {

	private static final String MM = "0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC ";

	private Dxf() {
	}

	/** A whole file in mm with these entities. */
	static String mm(String entities) {
		return MM + "0 SECTION 2 ENTITIES " + entities + " 0 ENDSEC 0 EOF";
	}

	static String withBlocks(String blocks, String entities) {
		return MM + "0 SECTION 2 BLOCKS " + blocks + " 0 ENDSEC 0 SECTION 2 ENTITIES " + entities + " 0 ENDSEC 0 EOF";
	}

	static byte[] bytes(String words) {
		return String.join("\n", words.strip().split("\\s+")).concat("\n").getBytes(StandardCharsets.UTF_8);
	}

	static ImportedArt read(String words) throws IOException, UnreadableArtException {
		return read(bytes(words), "file");
	}

	static ImportedArt read(byte[] bytes, String unit) throws IOException, UnreadableArtException {
		DxfImporter importer = new DxfImporter();
		return importer.read(ImportSource.of("plate.dxf", bytes),
				OptionValues.of(importer.options(), Map.of("unit", unit)), Monitor.NONE);
	}

	static List<ImportedShape.Lines> lines(ImportedArt art) {
		return art.layers().stream().flatMap(layer -> layer.shapes().stream()).map(ImportedShape.Lines.class::cast)
				.toList();
	}

	static Contour only(String entities) throws IOException, UnreadableArtException {
		List<ImportedShape.Lines> lines = lines(read(mm(entities)));
		if (lines.size() != 1 || lines.get(0).outline().contours().size() != 1) {
			throw new AssertionError("not one contour: " + lines);
		}
		return lines.get(0).outline().contours().get(0);
	}
}
