package org.frisket.prepare.fonts;

import java.nio.file.Path;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.typography.FontFace;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;
import org.frisket.typography.chart.GlyphText;

/**
 * Elements made of one glyph. A glyph that some text comes out as becomes a wording, which stays live; one that no text
 * reaches becomes an outline, whose name says what it was.
 */
public final class GlyphElements {

	/** As fine as what a wording's own outline is handed out with. */
	private static final int DECIMALS = 6;

	private GlyphElements() {
	}

	/**
	 * An element that lies in no job yet, with its origin on the baseline and a cut along it.
	 *
	 * @param capHeight of the font's capitals, in mm
	 * @return empty for a glyph that leaves no mark
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Optional<Element> of(GlyphChart chart, GlyphEntry entry, double capHeight, Monitor monitor) {
		Outline outline = chart.outline(entry, capHeight);
		if (outline.isEmpty()) {
			return Optional.empty();
		}
		Element element = GlyphText.of(chart, entry, monitor)
				.<Element>map(text -> wording(chart.face(), text, capHeight))
				.orElseGet(() -> outline(chart, entry, outline));
		Jobs.addOperation(element, OperationKind.CUT);
		return Optional.of(element);
	}

	private static Wording wording(FontFace face, GlyphText text, double capHeight) {
		Wording wording = FrisketFactory.INSTANCE.createWording();
		wording.setText(text.text());
		wording.setHeight(capHeight);
		wording.setFont(font(face));
		if (!text.features().isEmpty()) {
			wording.setFeatures(text.features().toString());
		}
		return wording;
	}

	private static Element outline(GlyphChart chart, GlyphEntry entry, Outline outline) {
		org.frisket.model.Outline element = FrisketFactory.INSTANCE.createOutline();
		element.setName(chart.face().fullName() + " · " + entry.label());
		element.setPathData(PathData.format(outline, DECIMALS));
		return element;
	}

	/** How a job remembers a font that is open. */
	public static FontRef font(FontFace face) {
		return Jobs.font(face.family(), face.style(), face.digest(),
				face.source().map(Path::toAbsolutePath).map(Path::toString).orElse(null));
	}
}
