package org.frisket.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
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
	 * @param jobs by id: the host and its guests, as far as they can be had; parts of the others are missing
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static List<LaidSheet> of(Job host, Map<String, PreparedJob> jobs, Tolerance tolerance, Monitor monitor) {
		Map<String, Map<String, SheetPart>> parts = new HashMap<>();
		jobs.forEach((id, job) -> {
			Map<String, SheetPart> byKey = parts.computeIfAbsent(id, key -> new HashMap<>());
			JobParts.of(job, false, tolerance, monitor).forEach(part -> byKey.put(part.key(), part));
			JobParts.of(job, true, tolerance, monitor).forEach(part -> byKey.putIfAbsent(part.key(), part));
		});
		List<LaidSheet> sheets = new ArrayList<>();
		for (Sheet sheet : host.getSheets()) {
			sheets.add(sheet(host, sheet, parts));
		}
		return sheets;
	}

	private static LaidSheet sheet(Job host, Sheet sheet, Map<String, Map<String, SheetPart>> parts) {
		List<LaidPart> laid = new ArrayList<>();
		List<Placement> missing = new ArrayList<>();
		List<PreparedElement> content = new ArrayList<>();
		for (Placement placement : sheet.getPlacements()) {
			String job = placement.getJob() == null ? host.getId() : placement.getJob();
			SheetPart part = parts.getOrDefault(job, Map.of()).get(placement.getPart());
			if (part == null) {
				missing.add(placement);
				continue;
			}
			Point centre = part.room().bounds().centre();
			Transform place = Transform.translation(-centre.x(), -centre.y())
					.then(Transform.rotation(Math.toRadians(placement.getTurn())))
					.then(Transform.translation(placement.getX(), placement.getY()));
			laid.add(new LaidPart(placement, part, place, part.room().transformed(place)));
			part.elements().forEach(element -> content.add(element.moved(place)));
		}
		Layer layer = FrisketFactory.INSTANCE.createLayer();
		layer.setId(sheet.getId());
		layer.setName(sheet.getName());
		layer.setStock(sheet.getStock());
		layer.setColour(sheet.getColour());
		return new LaidSheet(sheet, new PreparedJob(host, List.of(new PreparedLayer(layer, content))), laid, missing,
				List.of());
	}
}
