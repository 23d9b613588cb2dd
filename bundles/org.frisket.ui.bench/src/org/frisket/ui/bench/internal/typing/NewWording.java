package org.frisket.ui.bench.internal.typing;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;

/** What a wording is like before anything was said about it. */
final class NewWording {

	/** One of the fonts that come with the program, so that it is there on every machine. */
	private static final String FONT = "Liberation Serif"; //$NON-NLS-1$
	private static final String STYLE = "Regular"; //$NON-NLS-1$
	private static final double HEIGHT = 40;
	private static final double MARGIN = 15;

	private NewWording() {
	}

	/** A wording without words that begins at a place in mm, in no job yet. */
	static Wording at(Point place) {
		Wording wording = FrisketFactory.INSTANCE.createWording();
		wording.setText(""); //$NON-NLS-1$
		wording.setHeight(HEIGHT);
		wording.setFont(Jobs.font(FONT, STYLE, null, null));
		wording.setTransform(Matrix.translation(place.x(), place.y()));
		Jobs.addOperation(wording, OperationKind.CUT);
		return wording;
	}

	/** Another one that is set in the same way at the same place. */
	static Wording like(Wording wording) {
		Wording other = EcoreUtil.copy(wording);
		other.setId(null);
		other.setText(""); //$NON-NLS-1$
		return other;
	}

	/** On an empty sheet: at the left, capitals halfway up. */
	static Point firstPlace(Bounds sheet) {
		return new Point(sheet.minX() + MARGIN, Math.rint(sheet.centre().y() + HEIGHT / 2));
	}
}
