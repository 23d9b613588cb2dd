package org.frisket.editing.arranging;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Matrix;

/**
 * Applies one affine map to elements on the bench: scales, rotates, mirrors, or any other. As with a move, a mat that
 * follows one of the others is not mapped itself; it is derived anew and keeps its distance.
 */
public final class TransformElements extends RecordingEdit {

	private final Set<Element> elements;
	/** Null for a map that is no map of the plane onto itself. */
	private final Matrix map;

	/**
	 * @param name what is done, with {@code {0}} for the elements: "Scale {0}"
	 * @param map  in the job's frame, in mm
	 */
	public TransformElements(String name, List<? extends Element> elements, Matrix map) {
		super(NLS.bind(name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
		this.map = map;
	}

	/** Larger by {@code sx} across and {@code sy} down about a fixed place; a negative factor also mirrors. */
	public static TransformElements scale(List<? extends Element> elements, double sx, double sy, double x, double y) {
		return new TransformElements(Messages.TransformElements_scale, elements, matrix(sx, 0, 0, sy, x, y));
	}

	/** Turned clockwise to the viewer by an angle in radians about a fixed place. */
	public static TransformElements rotate(List<? extends Element> elements, double radians, double x, double y) {
		// whole quarters exactly, so that four of them lead back
		double quarters = radians / (Math.PI / 2);
		boolean whole = Math.abs(quarters - Math.rint(quarters)) < 1e-12;
		double sin = whole ? Math.rint(Math.sin(radians)) : Math.sin(radians);
		double cos = whole ? Math.rint(Math.cos(radians)) : Math.cos(radians);
		return new TransformElements(Messages.TransformElements_rotate, elements, matrix(cos, sin, -sin, cos, x, y));
	}

	/** Left and right exchanged about the upright line at {@code x}. */
	public static TransformElements mirrorLeftRight(List<? extends Element> elements, double x) {
		return new TransformElements(Messages.TransformElements_mirror, elements, matrix(-1, 0, 0, 1, x, 0));
	}

	/** Top and bottom exchanged about the level line at {@code y}. */
	public static TransformElements mirrorTopBottom(List<? extends Element> elements, double y) {
		return new TransformElements(Messages.TransformElements_mirror, elements, matrix(1, 0, 0, -1, 0, y));
	}

	private static Matrix matrix(double a, double b, double c, double d, double x, double y) {
		double e = x - a * x - c * y;
		double f = y - b * x - d * y;
		for (double number : new double[] { a, b, c, d, e, f }) {
			if (!Double.isFinite(number)) {
				return null;
			}
		}
		return new Matrix(a, b, c, d, e, f);
	}

	/** A map that flattens elements to a line is refused: they could never be made whole again. */
	@Override
	public boolean canApply() {
		return map != null && !map.equals(Matrix.IDENTITY) && map.a() * map.d() - map.b() * map.c() != 0
				&& Targets.freeInOneJob(elements);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return elements;
	}

	@Override
	protected void change() {
		for (Element element : Targets.leaders(elements)) {
			element.setTransform(element.getTransform().then(map));
		}
	}
}
