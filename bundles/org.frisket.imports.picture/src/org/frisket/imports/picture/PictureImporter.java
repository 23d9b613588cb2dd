package org.frisket.imports.picture;

import java.io.IOException;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.Importer;
import org.frisket.imports.UnreadableArtException;
import org.frisket.imports.WholePicture;
import org.frisket.print.picture.Resolution;

/** A file with a picture of pixels as that picture in its true size; the file itself is kept as it came. */
public final class PictureImporter implements Importer {

	private static final String OF_FILE = "file";

	/** Resolutions that scanners, cameras and screens use. */
	static final Option RESOLUTION = Option.choice("resolution", Messages.PictureImporter_resolution, OF_FILE, "72", "96", "150",
			"200", "300", "400", "600", "1200");

	@Override
	public List<Option> options() {
		return List.of(RESOLUTION);
	}

	@Override
	public ImportedArt read(ImportSource source, OptionValues options, Monitor monitor)
			throws IOException, UnreadableArtException {
		WholePicture picture = WholePicture.of(source, 1, monitor);
		String said = options.text(RESOLUTION);
		Resolution resolution = said.equals(OF_FILE) ? picture.resolution() : Resolution.given(Double.parseDouble(said));
		return picture.art(resolution,
				resolution.source() == Resolution.Source.ASSUMED ? List.of(RESOLUTION.name()) : List.of());
	}
}
