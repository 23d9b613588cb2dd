package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FontRef;
import org.frisket.prepare.internal.Shape;
import org.frisket.typography.FontFace;

/**
 * All that the shape of a wording depends on. It is gathered from the model itself, so that no feature can be forgotten.
 *
 * @param decisions values of all features a wording has beyond those of any element
 * @param fonts     by content, the wording's own first
 */
public record WordingKey(List<Object> decisions, List<Object> fonts, List<Contour> path, List<Shape.Remark> remarks,
		Tolerance tolerance) {

	/** @param settings of a variable font */
	private record Font(String digest, int index, Object settings) {
	}

	public static WordingKey of(WordingSource source, Tolerance tolerance) {
		List<Object> fonts = new ArrayList<>();
		fonts.add(font(source.face()));
		source.spans().forEach(span -> span.face().ifPresent(face -> fonts.add(font(face))));
		return new WordingKey(decisions(source.wording()), fonts, source.path().stream().toList(), source.remarks(),
				tolerance);
	}

	private static Font font(FontFace face) {
		return new Font(face.digest(), face.index(), face.settings());
	}

	/**
	 * The values of all features that a part has by its own class. Fonts and paths are references of another kind, and so
	 * is what is followed: their content counts.
	 */
	public static List<Object> decisions(EObject part) {
		List<Object> decisions = new ArrayList<>();
		for (EStructuralFeature feature : part.eClass().getEStructuralFeatures()) {
			Object value = part.eGet(feature);
			if (!(feature instanceof EReference reference)) {
				decisions.add(value);
			} else if (reference.isContainment() && value instanceof List<?> parts) {
				decisions.add(parts.stream().map(EObject.class::cast).map(WordingKey::decisions).toList());
			} else if (value instanceof FontRef) {
				decisions.add(feature.getName());
			}
		}
		return decisions;
	}
}
