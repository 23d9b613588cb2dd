package org.frisket.ui.views.internal.typecase;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.editing.elements.PlaceElement;
import org.frisket.editing.wording.TypeWording;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.PreviewColours;
import org.frisket.model.Wording;
import org.frisket.prepare.fonts.GlyphElements;
import org.frisket.typography.FontFace;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;
import org.frisket.ui.bench.JobOnBench;

/**
 * Puts glyphs on a bench. What a glyph becomes is found out in the background; then it is one step. Only for the UI
 * thread.
 */
final class Placer {

	private static final double USUAL_HEIGHT = 40;
	/** Between one that was put where there is room and the next. */
	private static final double STEP = 5;

	private final Display display;
	private final Supplier<JobOnBench> front;
	private final Consumer<String> said;

	/**
	 * @param front gives the bench in front, or null
	 * @param said  told what became of it
	 */
	Placer(Display display, Supplier<JobOnBench> front, Consumer<String> said) {
		this.display = display;
		this.front = front;
		this.said = said;
	}

	/**
	 * @param bench null if there is none
	 * @param place where the middle of the glyph comes to lie, in mm; empty for where there is room
	 */
	void place(JobOnBench bench, GlyphChart chart, GlyphEntry entry, Optional<Point> place) {
		if (bench == null) {
			said.accept(Messages.Placer_noBench);
			return;
		}
		if (place.isEmpty() && !entry.characters().isEmpty() && bench.typed().isPresent()
				&& isFontOf(bench.typed().get(), chart.face())) {
			bench.type(Character.toString(entry.characters().get(0)));
			said.accept(NLS.bind(Messages.Placer_typed, GlyphWords.of(entry)));
			return;
		}
		double height = height(bench);
		new Job(NLS.bind(Messages.Placer_job, entry.label())) {
			@Override
			protected IStatus run(IProgressMonitor monitor) {
				try {
					Optional<Element> element = GlyphElements.of(chart, entry, height, monitor::isCanceled);
					if (!display.isDisposed()) {
						display.asyncExec(() -> made(bench, chart, entry, element, height, place));
					}
					return Status.OK_STATUS;
				} catch (CancellationException e) {
					return Status.CANCEL_STATUS;
				}
			}
		}.schedule();
	}

	/** Of the wording that is typed or selected, so that what comes to it fits. */
	private static double height(JobOnBench bench) {
		return bench.typed().or(() -> bench.selection().stream().filter(Wording.class::isInstance)
				.map(Wording.class::cast).findFirst()).map(Wording::getHeight).filter(height -> height > 0)
				.orElse(USUAL_HEIGHT);
	}

	/** Whether a character typed into the wording comes out in this face. */
	private static boolean isFontOf(Wording wording, FontFace face) {
		FontRef font = wording.getFont();
		return font != null && face.family().equalsIgnoreCase(font.getName()) && (font.getStyle() == null
				? face.names().isPlain() : face.style().equalsIgnoreCase(font.getStyle()));
	}

	private void made(JobOnBench bench, GlyphChart chart, GlyphEntry entry, Optional<Element> made, double height,
			Optional<Point> place) {
		if (bench != front.get()) {
			// it was closed meanwhile, or another is worked on
			return;
		}
		if (made.isEmpty()) {
			said.accept(NLS.bind(Messages.Placer_blank, GlyphWords.of(entry)));
			return;
		}
		Element element = made.get();
		Bounds bounds = chart.outline(entry, height).bounds();
		Point origin = place.map(at -> new Point(at.x() - bounds.centre().x(), at.y() - bounds.centre().y()))
				.orElseGet(() -> free(bench));
		element.setTransform(Matrix.translation(origin.x(), origin.y()));
		boolean live = element instanceof Wording;
		bench.edits().execute(new PlaceElement(bench.job(), element,
				live ? TypeWording.LAYER_NAME : Messages.Placer_layer, PreviewColours.WORDING));
		bench.select(List.of(element));
		said.accept(NLS.bind(live ? Messages.Placer_wording : Messages.Placer_outline, GlyphWords.of(entry)));
	}

	/** Not right on another that was put there before. */
	private static Point free(JobOnBench bench) {
		Point place = bench.openPlace();
		List<Matrix> taken = Jobs.elements(bench.job()).stream().map(Element::getTransform).toList();
		while (taken.contains(Matrix.translation(place.x(), place.y()))) {
			place = new Point(place.x() + STEP, place.y() + STEP);
		}
		return place;
	}
}
