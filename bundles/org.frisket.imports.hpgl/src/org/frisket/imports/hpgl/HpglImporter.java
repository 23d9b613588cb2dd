package org.frisket.imports.hpgl;

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

/** Reads what HP-GL draws by pens. */
public final class HpglImporter implements Importer {

	/** 0.025 mm by the HP-GL/2 reference; some machines count in thousandths of an inch. */
	static final Option STEP = Option.length("step", Messages.HpglImporter_step, "0.025mm", 0.0001, 10);

	@Override
	public List<Option> options() {
		return List.of(STEP);
	}

	@Override
	public ImportedArt read(ImportSource source, OptionValues options, Monitor monitor)
			throws IOException, UnreadableArtException {
		try (InputStream in = LargestFile.open(source)) {
			InstructionReader reader = new InstructionReader(source.name(), in);
			Plotter plotter = new Plotter(reader, options.length(STEP));
			boolean known = false;
			for (Instruction next = reader.next(); next != null; next = reader.next()) {
				monitor.check();
				known |= plotter.run(next);
			}
			if (!known) {
				throw new UnreadableArtException(source.name(), "", Messages.Plotter_nothing);
			}
			return plotter.art();
		}
	}
}
