package org.frisket.imports;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Transform;
import org.frisket.model.ImageBytes;
import org.frisket.prepare.pictures.PictureFile;
import org.frisket.prepare.pictures.UnreadablePictureException;
import org.frisket.print.picture.Resolution;

/** A whole file as one picture, which is printed as it is; the file itself is kept as it came. */
public final class WholePicture {

	private final ImportSource source;
	private final byte[] bytes;
	private final PictureFile file;

	private WholePicture(ImportSource source, byte[] bytes, PictureFile file) {
		this.source = source;
		this.bytes = bytes;
		this.file = file;
	}

	/**
	 * @param page from 1, of a PDF
	 * @throws UnreadableArtException if it is no picture that can be read, or has no such page
	 */
	public static WholePicture of(ImportSource source, int page, Monitor monitor) throws IOException, UnreadableArtException {
		byte[] bytes;
		try (InputStream in = LargestFile.openUnpacked(source)) {
			bytes = in.readAllBytes();
		}
		monitor.check();
		try {
			return new WholePicture(source, bytes, PictureFile.of(ImageBytes.of(bytes), page));
		} catch (UnreadablePictureException e) {
			throw new UnreadableArtException(source.name(), "", e.getMessage(), e);
		}
	}

	/** How fine its file says it is. */
	public Resolution resolution() {
		return file.resolution();
	}

	/** In its true size. */
	public ImportedArt art() {
		return art(resolution(), file.trueWidth(), file.trueHeight(), List.of());
	}

	/**
	 * In the size that it has at a resolution.
	 *
	 * @param guessed see {@link ImportedArt#guessed()}
	 */
	public ImportedArt art(Resolution resolution, List<String> guessed) {
		return art(resolution, file.width() * resolution.pixelWidth(), file.height() * resolution.pixelHeight(), guessed);
	}

	private ImportedArt art(Resolution resolution, double width, double height, List<String> guessed) {
		String name = name(source.name());
		List<Remark> remarks = new ArrayList<>();
		if (file.pages() > 1) {
			remarks.add(new Remark("", NLS.bind(Messages.WholePicture_page, file.page(), file.pages())));
		}
		file.remarks(resolution).forEach(remark -> remarks.add(new Remark("", remark.text())));
		ImportedShape.Picture picture = new ImportedShape.Picture(name, bytes, file.mediaType(),
				Transform.scaling(width, height));
		return new ImportedArt(List.of(new ImportedLayer(name, "", List.of(picture))), Bounds.EMPTY, remarks, guessed);
	}

	/** The name of the file without its folders and its ending. */
	private static String name(String path) {
		String name = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
		return name.lastIndexOf('.') > 0 ? name.substring(0, name.lastIndexOf('.')) : name;
	}
}
