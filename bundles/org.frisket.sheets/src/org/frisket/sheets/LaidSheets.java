package org.frisket.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;

/** The sheets of a job as they come to, each by itself. */
public final class LaidSheets {

	private LaidSheets() {
	}

	/**
	 * @param host of whose sheets this is about
	 * @param jobs by what placements call them: the host by its id, and its guests by the ids that
	 *             {@link org.frisket.model.Guest#getJob()} has, as far as they can be had; parts of the others are missing
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static List<LaidSheet> of(Job host, Map<String, PreparedJob> jobs, Tolerance tolerance, Monitor monitor) {
		BiFunction<String, String, SheetPart> parts = lookUp(jobs, tolerance, monitor);
		List<LaidSheet> sheets = new ArrayList<>();
		for (Sheet sheet : host.getSheets()) {
			monitor.check();
			LaidSheet laid = sheet(host, sheet, parts);
			sheets.add(new LaidSheet(sheet, laid.content(), laid.parts(), laid.missing(),
					SheetFindings.of(laid, tolerance, monitor)));
		}
		return sheets;
	}

	/** From job and key to the part, null if there is none; parts are only worked out where placements ask for them. */
	public static BiFunction<String, String, SheetPart> lookUp(Map<String, PreparedJob> jobs, Tolerance tolerance,
			Monitor monitor) {
		Map<String, Map<String, SheetPart>> whole = new HashMap<>();
		Map<String, Map<String, SheetPart>> pieces = new HashMap<>();
		return (job, key) -> {
			if (!jobs.containsKey(job) || key == null) {
				return null;
			}
			boolean apart = SheetPart.isPiece(key);
			return (apart ? pieces : whole).computeIfAbsent(job, each -> {
				Map<String, SheetPart> byKey = new HashMap<>();
				JobParts.of(jobs.get(each), apart, tolerance, monitor).forEach(part -> byKey.put(part.key(), part));
				return byKey;
			}).get(key);
		};
	}

	/** From the frame of a part's job to where its centre lies on the sheet. @param turn in degrees, clockwise as seen */
	static Transform place(Region room, double x, double y, double turn) {
		Point centre = room.bounds().centre();
		return Transform.translation(-centre.x(), -centre.y()).then(rotation(turn)).then(Transform.translation(x, y));
	}

	/** Exact for right angles, so that edges along the sheet stay so. */
	private static Transform rotation(double degrees) {
		double quarters = degrees / 90;
		if (quarters != Math.rint(quarters)) {
			return Transform.rotation(Math.toRadians(degrees));
		}
		return switch ((int) (((long) quarters % 4 + 4) % 4)) {
		case 0 -> Transform.IDENTITY;
		case 1 -> new Transform(0, 1, -1, 0, 0, 0);
		case 2 -> new Transform(-1, 0, 0, -1, 0, 0);
		default -> new Transform(0, -1, 1, 0, 0, 0);
		};
	}

	private static LaidSheet sheet(Job host, Sheet sheet, BiFunction<String, String, SheetPart> parts) {
		List<LaidPart> laid = new ArrayList<>();
		List<Placement> missing = new ArrayList<>();
		List<PreparedElement> content = new ArrayList<>();
		for (Placement placement : sheet.getPlacements()) {
			String job = placement.getJob() == null ? host.getId() : placement.getJob();
			SheetPart part = parts.apply(job, placement.getPart());
			if (part == null) {
				missing.add(placement);
				continue;
			}
			Transform place = place(part.room(), placement.getX(), placement.getY(), placement.getTurn());
			laid.add(new LaidPart(placement, part, place, part.room().transformed(place)));
			part.elements().forEach(element -> content.add(element.moved(place)));
		}
		Layer layer = FrisketFactory.INSTANCE.createLayer();
		layer.setId(sheet.getId());
		layer.setName(SheetName.of(sheet));
		layer.setStock(sheet.getStock());
		layer.setColour(sheet.getColour());
		return new LaidSheet(sheet, new PreparedJob(host, List.of(new PreparedLayer(layer, content))), laid, missing,
				List.of());
	}
}
