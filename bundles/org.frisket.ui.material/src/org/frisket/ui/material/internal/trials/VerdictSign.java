package org.frisket.ui.material.internal.trials;

import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.frisket.material.trials.Verdict;
import org.frisket.ui.ThemeColour;

/**
 * The sign of a verdict on paper, each of its own form so that its hue only helps. A disc: through. A bar: not through. A
 * zigzag: torn. A cross: carrier cut. A corner: corners lifted.
 */
public final class VerdictSign {

	private static final float[] NOT_THROUGH = { -1, 0, 1, 0 };
	private static final float[] TORN = { -1, 0.7f, -0.4f, -0.7f, 0.3f, 0.7f, 1, -0.7f };
	private static final float[] DOWN = { -1, -1, 1, 1 };
	private static final float[] UP = { -1, 1, 1, -1 };
	private static final float[] CORNER = { -0.9f, 1, -0.9f, -0.9f, 1, -0.9f };
	private static final float DISC = 0.9f;

	private VerdictSign() {
	}

	/** The hue, as the theme has it now. */
	public static Color colour(Verdict verdict) {
		ColorRegistry registry = JFaceResources.getColorRegistry();
		Color themed = registry.get("org.frisket.verdict." + switch (verdict) { //$NON-NLS-1$
		case THROUGH -> "through"; //$NON-NLS-1$
		case NOT_THROUGH -> "notThrough"; //$NON-NLS-1$
		case TORN -> "torn"; //$NON-NLS-1$
		case CARRIER_CUT -> "carrierCut"; //$NON-NLS-1$
		case CORNERS_LIFTED -> "cornersLifted"; //$NON-NLS-1$
		});
		return themed != null ? themed : ThemeColour.BENCH_INK.colour();
	}

	/** @param size half of its width in pixels */
	static void paint(GC gc, Verdict verdict, float x, float y, float size) {
		gc.setAntialias(SWT.ON);
		gc.setForeground(colour(verdict));
		gc.setBackground(colour(verdict));
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setLineWidth(Math.max(2, Math.round(size / 3)));
		switch (verdict) {
		case THROUGH -> gc.fillOval(Math.round(x - size * DISC), Math.round(y - size * DISC), Math.round(2 * size * DISC),
				Math.round(2 * size * DISC));
		case NOT_THROUGH -> line(gc, NOT_THROUGH, x, y, size);
		case TORN -> line(gc, TORN, x, y, size);
		case CARRIER_CUT -> {
			line(gc, DOWN, x, y, size);
			line(gc, UP, x, y, size);
		}
		case CORNERS_LIFTED -> line(gc, CORNER, x, y, size);
		}
		gc.setLineWidth(1);
	}

	private static void line(GC gc, float[] points, float x, float y, float size) {
		Path path = new Path(gc.getDevice());
		for (int i = 0; i < points.length; i += 2) {
			if (i == 0) {
				path.moveTo(x + points[0] * size, y + points[1] * size);
			} else {
				path.lineTo(x + points[i] * size, y + points[i + 1] * size);
			}
		}
		gc.drawPath(path);
		path.dispose();
	}
}
