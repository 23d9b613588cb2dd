package org.frisket.imports.dxf;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.Importer;
import org.frisket.imports.LargestFile;
import org.frisket.imports.UnreadableArtException;

/** Reads the entities of ASCII DXF that are lines or curves. */
public final class DxfImporter implements Importer {

	static final Option UNIT = Option.choice("unit", Messages.DxfImporter_unit, "file", "mm", "cm", "m", "in", "ft",
			"mil", "um");

	@Override
	public List<Option> options() {
		return List.of(UNIT);
	}

	@Override
	public ImportedArt read(ImportSource source, OptionValues options, Monitor monitor)
			throws IOException, UnreadableArtException {
		try (InputStream in = LargestFile.open(source)) {
			GroupReader reader = new GroupReader(source.name(), in);
			Drawing drawing = new DrawingReader(source.name(), reader, monitor).read();
			return new DrawingArt(source.name(), drawing, monitor).art(LengthUnit.of(options.text(UNIT)));
		}
	}
}
