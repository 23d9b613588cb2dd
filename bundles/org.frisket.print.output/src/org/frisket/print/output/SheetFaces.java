package org.frisket.print.output;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Sheet;
import org.frisket.page.AwtPath;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.Severity;
import org.frisket.sheets.LaidPart;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;

/**
 * What lies on a sheet, sorted by the side that it is on; all of it seen from the front, in mm from the upper left corner.
 * What is on a back layer of a job goes with the part of the same stock that it lies on, as a print on its back does; words
 * on such a layer are to be mirrored on the bench, as one would see them through the sheet.
 */
public final class SheetFaces {

	private final Job job;
	private final Sheet sheet;
	private final int number;
	private final List<LaidPart> parts;
	private final List<FaceItem> front = new ArrayList<>();
	private final List<FaceItem> back = new ArrayList<>();
	private final List<Finding> findings = new ArrayList<>();

	private SheetFaces(Job job, Sheet sheet, int number, List<LaidPart> parts) {
		this.job = job;
		this.sheet = sheet;
		this.number = number;
		this.parts = parts;
	}

	/**
	 * The sheets of a job.
	 *
	 * @param jobs     by what placements call them, as for {@link LaidSheets#of}
	 * @param knockOut whether it is asked what pieces of layers above will cover
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static List<SheetFaces> of(Job host, Map<String, PreparedJob> jobs, boolean knockOut, Tolerance tolerance,
			Monitor monitor) {
		List<SheetFaces> all = new ArrayList<>();
		Map<PreparedJob, Covers> covers = new HashMap<>();
		for (LaidSheet laid : LaidSheets.of(host, jobs, tolerance, monitor)) {
			SheetFaces faces = new SheetFaces(host, laid.sheet(), all.size() + 1, laid.parts());
			for (int i = 0; i < laid.parts().size(); i++) {
				LaidPart part = laid.parts().get(i);
				String guest = part.placement().getJob();
				PreparedJob whose = jobs.get(guest == null ? host.getId() : guest);
				Region covered = knockOut
						? covers.computeIfAbsent(whose, each -> new Covers(each, tolerance, monitor)).above(part.part().layer())
						: Region.EMPTY;
				faces.take(part, i, whose, covered);
			}
			faces.findings.addAll(laid.findings());
			all.add(faces);
		}
		return all;
	}

	/** A job without sheets: all of it as it lies, in the middle of one sheet. @param sheet of no job */
	public static SheetFaces bare(PreparedJob job, Sheet sheet, boolean knockOut, Tolerance tolerance, Monitor monitor) {
		SheetFaces faces = new SheetFaces(job.job(), sheet, 1, List.of());
		Bounds shown = job.visibleBounds();
		Bounds whole = faces.page();
		if (shown.width() > whole.width() || shown.height() > whole.height()) {
			faces.findings.add(Finding.plain("sheet-too-small", Severity.BLOCKING, "", whole.centre(),
					Messages.SheetFaces_small, Messages.SheetFaces_smallCure));
		}
		Point centre = shown.isEmpty() ? whole.centre() : shown.centre();
		Transform place = Transform.translation(whole.centre().x() - centre.x(), whole.centre().y() - centre.y());
		Covers covers = new Covers(job, tolerance, monitor);
		for (PreparedLayer layer : job.layers()) {
			Region covered = knockOut && !layer.layer().isBack() ? covers.above(layer.layer()).transformed(place) : Region.EMPTY;
			for (PreparedElement element : layer.shown()) {
				if (!element.operations().isEmpty()) {
					(layer.layer().isBack() ? faces.back : faces.front)
							.add(new FaceItem(element.moved(place), layer.layer(), 0, covered));
				}
			}
		}
		return faces;
	}

	private void take(LaidPart part, int index, PreparedJob whose, Region covered) {
		Layer layer = part.part().layer();
		Region hidden = covered.transformed(part.place());
		part.part().elements()
				.forEach(element -> front.add(new FaceItem(element.moved(part.place()), layer, index, hidden)));
		for (PreparedLayer other : whose.layers()) {
			boolean same = other.layer().getStock() == null || Objects.equals(other.layer().getStock(), layer.getStock());
			if (!other.layer().isBack() || !same) {
				continue;
			}
			for (PreparedElement element : other.shown()) {
				Point middle = element.bounds().isEmpty() ? null : element.bounds().centre();
				if (middle != null && !element.operations().isEmpty()
						&& AwtPath.of(part.part().room().contours()).contains(middle.x(), middle.y())) {
					back.add(new FaceItem(element.moved(part.place()), other.layer(), index, Region.EMPTY));
				}
			}
		}
	}

	public Job job() {
		return job;
	}

	public Sheet sheet() {
		return sheet;
	}

	/** Of the sheet among those of its job, from 1. */
	public int number() {
		return number;
	}

	/** The whole sheet. */
	public Bounds page() {
		return new Bounds(0, 0, sheet.getWidth(), sheet.getHeight());
	}

	/** What is wrong with how parts lie on it. */
	public List<Finding> findings() {
		return findings;
	}

	/** Empty for a job that is not laid on sheets. */
	List<LaidPart> parts() {
		return parts;
	}

	List<FaceItem> items(boolean ofBack) {
		return ofBack ? back : front;
	}

	/** What a part takes up; empty for what is not laid in parts. */
	Optional<Region> room(int part) {
		return part >= 0 && part < parts.size() ? Optional.of(parts.get(part).room()) : Optional.empty();
	}
}
