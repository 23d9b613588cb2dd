package org.frisket.export.png;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.model.Job;
import org.frisket.page.AwtPath;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.FontFace;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.UnknownFontException;

/**
 * The line under a proof: a measured bar, and the job's number, title and due date. It is set with a font that the
 * product brings, so that the picture is the same everywhere.
 */
final class Caption {

	private static final String FONT = "Liberation Sans";
	private static final double CAP_HEIGHT = 2.2;
	private static final double BAR = 50;
	private static final double TICK = 1;

	private final SetText text;

	private Caption(SetText text) {
		this.text = text;
	}

	static Caption of(Job job) throws IOException {
		List<String> parts = new ArrayList<>();
		if (job.getNumber() != null) {
			parts.add(NLS.bind(Messages.Caption_job, job.getNumber()));
		}
		if (job.getTitle() != null) {
			parts.add(job.getTitle().lines().findFirst().orElse(""));
		}
		if (job.getDue() != null) {
			parts.add(NLS.bind(Messages.Caption_due, job.getDue()));
		}
		String line = "50 mm" + (parts.isEmpty() ? "" : "    ") + String.join(" · ", parts);
		try {
			FontFace face = FontLibraries.installed().find(FONT);
			return new Caption(TextSetter.set(line, face, Setting.ofCapHeight(CAP_HEIGHT), Monitor.NONE));
		} catch (UnknownFontException | UnreadableFontException e) {
			throw new IOException(NLS.bind(Messages.Caption_trouble, e.getMessage()), e);
		}
	}

	/** In mm. */
	double width() {
		return BAR + 3 + text.bounds().maxX();
	}

	/** In mm, with the space below. */
	double height() {
		return 10;
	}

	/** With its top left corner at the painter's place. */
	void paint(ProofPainter painter) {
		Path2D bar = new Path2D.Double(Path2D.WIND_NON_ZERO);
		bar.append(new Rectangle2D.Double(0, CAP_HEIGHT / 2 - 0.1, BAR, 0.2), false);
		for (int centimetre = 0; centimetre <= 5; centimetre++) {
			bar.append(new Rectangle2D.Double(centimetre * 10 - 0.1, CAP_HEIGHT / 2 - TICK, 0.2, 2 * TICK), false);
		}
		painter.fill(bar, ProofPainter.INK);
		Path2D letters = AwtPath.of(text.outline().contours());
		letters.transform(AffineTransform.getTranslateInstance(BAR + 3, CAP_HEIGHT));
		painter.fill(letters, ProofPainter.INK);
	}
}
