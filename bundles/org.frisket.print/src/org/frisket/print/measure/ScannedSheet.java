package org.frisket.print.measure;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.print.marks.FoundMarks;
import org.frisket.print.marks.MarkFinder;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.picture.Grey;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.Resolution;
import org.frisket.print.picture.UnreadablePictureException;

/**
 * A scan or a photograph of a sheet with the marks that were found in it. A scanner says how fine it is; a camera's file says
 * something that is true of no sheet, and then only the sheet itself tells a scale.
 *
 * @param file  it was read from
 * @param grey  what is seen
 * @param said  dots to the inch across and down as the file says; empty if it says nothing
 * @param found the marks
 */
public record ScannedSheet(Path file, Grey grey, Optional<Resolution> said, FoundMarks found) {

	private static final double MM_PER_INCH = 25.4;
	/** A printer is off by less; a sheet that seems further off was not scanned at what the file says. A choice of ours. */
	private static final double OFF_BY = 0.1;
	private static final int NOTHING_SEEN = 0x80;

	/**
	 * Reads a file and looks for the marks.
	 *
	 * @param monitor asked whether to go on, and told how far it is
	 * @throws UnreadablePictureException if the file cannot be read; names it
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static ScannedSheet read(Path file, MarkPlan plan, Monitor monitor) throws UnreadablePictureException {
		PictureFile picture = PictureFile.of(file);
		Resolution resolution = picture.resolution();
		monitor.worked(0.05);
		Grey grey = picture.pixels(monitor.part(0.05, 0.4)).grey();
		monitor.check();
		monitor.worked(0.4);
		Optional<Resolution> said = resolution.source() == Resolution.Source.FILE ? Optional.of(resolution) : Optional.empty();
		FoundMarks found = said.isPresent() ? MarkFinder.find(plan, grey, said.get().x(), monitor.part(0.4, 0.7))
				: MarkFinder.find(plan, grey, monitor.part(0.4, 0.7));
		monitor.worked(0.7);
		if (said.isPresent() && found.map().isEmpty()) {
			// what a camera writes into its files is no scale of what it saw
			found = MarkFinder.find(plan, grey, monitor.part(0.7, 1));
		}
		monitor.worked(1);
		return new ScannedSheet(file, grey, said, found);
	}

	/** The dots to the inch at which the sheet has the size of its design; empty if too few marks were found. */
	public OptionalDouble dpiOfMarks() {
		if (found.map().isEmpty()) {
			return OptionalDouble.empty();
		}
		Transform linear = found.map().get().linear(new Point(found.plan().width() / 2, found.plan().height() / 2));
		double dpi = Math.sqrt(Math.abs(linear.determinant())) * MM_PER_INCH;
		return Resolution.isSound(dpi) ? OptionalDouble.of(dpi) : OptionalDouble.empty();
	}

	/** What the file says of its scale, if the sheet in it bears that out; empty if the scale is to be asked for. */
	public Optional<Resolution> resolution() {
		OptionalDouble seen = dpiOfMarks();
		return said.filter(each -> seen.isEmpty()
				|| Math.abs(seen.getAsDouble() / Math.sqrt(each.x() * each.y()) - 1) <= OFF_BY);
	}

	/** Where the marks are in mm from the upper left corner of the scan, in the order of the plan. */
	public List<Optional<Point>> places(Resolution resolution) {
		return found.places(resolution);
	}

	/**
	 * The scan laid flat under the design: the whole sheet as it was planned, and the table's grey where the scan has nothing.
	 * Empty if too few marks were found.
	 *
	 * @param longest of its sides, pixels
	 */
	public Optional<Grey> flat(int longest, Monitor monitor) {
		if (found.map().isEmpty()) {
			return Optional.empty();
		}
		double perPixel = Math.max(found.plan().width(), found.plan().height()) / longest;
		int width = (int) Math.max(1, Math.round(found.plan().width() / perPixel));
		int height = (int) Math.max(1, Math.round(found.plan().height() / perPixel));
		byte[] shades = new byte[width * height];
		for (int y = 0; y < height; y++) {
			monitor.check();
			for (int x = 0; x < width; x++) {
				Point pixel = found.map().get().apply(new Point((x + 0.5) * perPixel, (y + 0.5) * perPixel));
				shades[y * width + x] = (byte) (grey.contains(pixel.x(), pixel.y())
						? (int) Math.round(grey.sample(pixel.x(), pixel.y())) : NOTHING_SEEN);
			}
		}
		return Optional.of(new Grey(width, height, shades));
	}
}
