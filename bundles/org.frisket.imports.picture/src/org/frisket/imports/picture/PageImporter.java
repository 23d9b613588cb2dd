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

/** A page of a PDF as printed art in its true size; it stays a drawing, and the file is kept as it came. */
public final class PageImporter implements Importer {

	private static final int MOST = 100_000;

	static final Option PAGE = Option.count("page", Messages.PageImporter_page, 1, 1, MOST);

	@Override
	public List<Option> options() {
		return List.of(PAGE);
	}

	@Override
	public ImportedArt read(ImportSource source, OptionValues options, Monitor monitor)
			throws IOException, UnreadableArtException {
		return WholePicture.of(source, options.count(PAGE), monitor).art();
	}
}
