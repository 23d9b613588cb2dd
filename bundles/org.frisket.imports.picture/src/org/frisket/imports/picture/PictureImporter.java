package org.frisket.imports.picture;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Transform;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Importer;
import org.frisket.imports.LargestFile;
import org.frisket.imports.Remark;
import org.frisket.imports.UnreadableArtException;
import org.frisket.model.ImageBytes;
import org.frisket.prepare.pictures.PictureFile;
import org.frisket.prepare.pictures.UnreadablePictureException;
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
		byte[] bytes;
		try (InputStream in = LargestFile.open(source)) {
			bytes = in.readAllBytes();
		}
		monitor.check();
		PictureFile file;
		try {
			file = PictureFile.of(ImageBytes.of(bytes));
		} catch (UnreadablePictureException e) {
			throw new UnreadableArtException(source.name(), "", e.getMessage(), e);
		}
		String said = options.text(RESOLUTION);
		Resolution resolution = said.equals(OF_FILE) ? file.resolution() : Resolution.given(Double.parseDouble(said));
		String name = name(source.name());
		ImportedShape.Picture picture = new ImportedShape.Picture(name, bytes, file.mediaType(), Transform.scaling(
				file.width() * resolution.pixelWidth(), file.height() * resolution.pixelHeight()));
		return new ImportedArt(List.of(new ImportedLayer(name, "", List.of(picture))), Bounds.EMPTY,
				file.remarks(resolution).stream().map(remark -> new Remark("", remark.text())).toList(),
				resolution.source() == Resolution.Source.ASSUMED ? List.of(RESOLUTION.name()) : List.of());
	}

	/** The name of the file without its folders and its ending. */
	private static String name(String path) {
		String name = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
		return name.lastIndexOf('.') > 0 ? name.substring(0, name.lastIndexOf('.')) : name;
	}
}
