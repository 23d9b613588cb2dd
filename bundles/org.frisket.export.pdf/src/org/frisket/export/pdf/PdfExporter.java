package org.frisket.export.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/** Writes PDF 1.7 with processing steps. */
public final class PdfExporter implements Exporter {

	static final Option MARGIN = Option.length("margin", Messages.PdfExporter_margin, "5mm", 0, 1000);
	static final Option LINE_WIDTH = Option.length("line-width", Messages.PdfExporter_lineWidth, "0.1mm", 0.01, 5);
	static final Option ARTWORK = Option.choice("artwork", Messages.PdfExporter_artwork, "with", "without");
	static final Option LABEL = Option.choice("label", Messages.PdfExporter_label, "without", "with");

	@Override
	public List<Option> options() {
		return List.of(MARGIN, LINE_WIDTH, ARTWORK, LABEL);
	}

	/** Whether one of the options that offer it was chosen. */
	static boolean with(Option option, OptionValues options) {
		return options.text(option).equals("with");
	}

	@Override
	public void export(Handoff handoff, OptionValues options, Monitor monitor, OutputStream out) throws IOException {
		PageFrame frame = PageFrame.of(handoff, options.length(MARGIN));
		try (PdfFile file = new PdfFile(frame)) {
			try (PageContent content = new PageContent(file, frame, options.length(LINE_WIDTH))) {
				if (with(ARTWORK, options)) {
					content.artwork(handoff.job(), monitor);
				}
				content.steps(handoff.job(), monitor);
				if (with(LABEL, options)) {
					content.label(Label.of(handoff));
				}
			}
			monitor.check();
			file.write(handoff, out);
		}
	}
}
