package org.frisket.prepare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.Wording;
import org.frisket.prepare.internal.ElementSteps;
import org.frisket.prepare.internal.PlacedShape;
import org.frisket.typography.FontLibrary;

/**
 * Works a job through to clean regions. It is a function of the job, the fonts and the tolerance: nothing is stored in
 * the job, and equal input gives equal output. Results are kept by content, so that preparing again after an edit costs
 * only what the edit touched. Safe for use by several threads, each with a job of its own: hand in a copy of a job that
 * may change meanwhile.
 */
public final class JobPreparer {

	private final ElementSteps steps;

	public JobPreparer(FontLibrary fonts) {
		steps = new ElementSteps(fonts);
	}

	/**
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public PreparedJob prepare(Job job, Tolerance tolerance, Monitor monitor) {
		return new Run(tolerance, monitor).prepare(job);
	}

	/**
	 * Where a caret stands in a wording while it is typed: on the baseline before each character (UTF-16) and after the
	 * last one, in mm of the wording's own frame. Empty if the wording's font is missing.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public List<Point> carets(Wording wording, Tolerance tolerance, Monitor monitor) {
		return steps.carets(wording, tolerance, monitor);
	}

	private final class Run {

		private final Tolerance tolerance;
		private final Monitor monitor;
		private final Map<Element, PlacedShape> done = new HashMap<>();
		private final Set<Element> underway = new HashSet<>();

		Run(Tolerance tolerance, Monitor monitor) {
			this.tolerance = tolerance;
			this.monitor = monitor;
		}

		PreparedJob prepare(Job job) {
			List<PreparedLayer> layers = new ArrayList<>();
			for (Layer layer : job.getLayers()) {
				List<PreparedElement> elements = new ArrayList<>();
				for (Element element : layer.getElements()) {
					elements.add(prepared(element));
				}
				layers.add(new PreparedLayer(layer, elements));
			}
			return new PreparedJob(job, layers);
		}

		private PreparedElement prepared(Element element) {
			PlacedShape placed = placed(element);
			return new PreparedElement(element, placed.region(), placed.lines(),
					placed.shape().uncleaned().placed(placed.transform()), placed.findings(element.getId()));
		}

		private PlacedShape placed(Element element) {
			PlacedShape known = done.get(element);
			if (known != null) {
				return known;
			}
			monitor.check();
			underway.add(element);
			PlacedShape placed = element instanceof Mat mat ? mat(mat)
					: steps.shape(element, tolerance, monitor).placed(transform(element));
			underway.remove(element);
			done.put(element, placed);
			return placed;
		}

		private PlacedShape mat(Mat mat) {
			List<PlacedShape> before = new ArrayList<>();
			for (Element element : mat.getBehind()) {
				if (underway.contains(element)) {
					return steps.matBehindItself(transform(mat));
				}
				before.add(placed(element));
			}
			return steps.mat(mat, before, tolerance, monitor, transform(mat));
		}
	}

	private static Transform transform(Element element) {
		Matrix m = element.getTransform();
		return m == null ? Transform.IDENTITY : new Transform(m.a(), m.b(), m.c(), m.d(), m.e(), m.f());
	}
}
