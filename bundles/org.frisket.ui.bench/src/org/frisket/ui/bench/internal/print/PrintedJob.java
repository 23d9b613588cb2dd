package org.frisket.ui.bench.internal.print;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.swt.graphics.Color;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.model.OperationKind;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.picture.ElementPicture;

/**
 * What of a job comes onto paper: what is seen of it on the bench, the lowest first, but for the parts of combinations.
 *
 * @param number of the job; empty if it has none yet
 * @param bounds of all elements, in mm
 */
public record PrintedJob(String title, String number, List<PrintedElement> elements, Bounds bounds) {

	/** Room for the lines themselves, in mm. */
	private static final double LINE_ROOM = 1;

	/** @param shift from where the picture was made to where the element lies */
	public record PrintedElement(ElementPicture picture, Transform shift, Color stock) {
	}

	/** @param name how a job without a title is called */
	public static PrintedJob of(EditPartViewer viewer, Job job, String name) {
		List<PrintedElement> elements = new ArrayList<>();
		Bounds bounds = Bounds.EMPTY;
		for (ElementPart part : Selection.all(viewer)) {
			if (part.picture().part()) {
				continue;
			}
			elements.add(new PrintedElement(part.picture(), part.shift(), part.stock()));
			bounds = bounds.with(part.boundsInMm());
		}
		String title = job.getTitle() == null || job.getTitle().isBlank() ? name : job.getTitle();
		String number = Objects.toString(job.getNumber(), ""); //$NON-NLS-1$
		return new PrintedJob(title.lines().findFirst().orElse(name), number,
				List.copyOf(elements), bounds.grown(LINE_ROOM));
	}

	/** The operations that are seen, in their usual order. */
	Set<OperationKind> operations() {
		Set<OperationKind> kinds = EnumSet.noneOf(OperationKind.class);
		elements.stream().filter(element -> !element.picture().curves().isEmpty())
				.forEach(element -> kinds.addAll(element.picture().strokes()));
		return kinds;
	}
}
