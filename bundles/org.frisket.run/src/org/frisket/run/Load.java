package org.frisket.run;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.frisket.geometry.Bounds;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.sheets.LaidPart;
import org.frisket.sheets.LaidSheet;

/** What is put into a machine: a sheet with parts on it, or a job as it lies on the bench. */
public final class Load {

	/** An element as it lies. The same element of a part that was laid twice lies elsewhere. */
	private record Lying(String element, Bounds bounds) {

		static Lying of(PreparedElement element) {
			return new Lying(element.element().getId(), element.bounds());
		}
	}

	/** @param part what comes off the sheet as one @param job id of whose it is */
	private record Whose(String part, String job) {
	}

	private final PreparedJob content;
	private final Sheet sheet;
	private final Map<Lying, Whose> whose = new HashMap<>();
	private final Map<String, Double> rooms = new LinkedHashMap<>();
	private final Map<String, Job> jobs = new LinkedHashMap<>();

	private Load(PreparedJob content, Sheet sheet) {
		this.content = content;
		this.sheet = sheet;
		jobs.put(content.job().getId(), content.job());
	}

	/** A job as it lies on the bench; each of its elements is a part. */
	public static Load bench(PreparedJob job) {
		return new Load(job, null);
	}

	/** A sheet; its guests are known by the ids that its placements call them by. */
	public static Load of(LaidSheet laid) {
		Load load = new Load(laid.content(), laid.sheet());
		List<LaidPart> parts = laid.parts();
		for (int i = 0; i < parts.size(); i++) {
			LaidPart part = parts.get(i);
			String guest = part.placement().getJob();
			String job = guest == null ? laid.content().job().getId() : guest;
			Whose each = new Whose(part.part().key() + '@' + (i + 1), job);
			part.part().elements().forEach(element -> load.whose.put(Lying.of(element.moved(part.place())), each));
			load.rooms.merge(job, part.room().area(), Double::sum);
			load.jobs.putIfAbsent(job, part.part().job());
		}
		return load;
	}

	/** What is to be done, in mm from the sheet's upper left corner, or as it lies on the bench. */
	public PreparedJob content() {
		return content;
	}

	/** Empty for a job as it lies on the bench. */
	public Optional<Sheet> sheet() {
		return Optional.ofNullable(sheet);
	}

	/** The sheet, or what the lines on the bench take up, in mm. */
	public Bounds page() {
		if (sheet != null) {
			return new Bounds(0, 0, sheet.getWidth(), sheet.getHeight());
		}
		Bounds shown = content.visibleBounds();
		return shown.isEmpty() ? new Bounds(0, 0, 0, 0) : shown;
	}

	/**
	 * The part that an element belongs to: what comes off the sheet as one.
	 *
	 * @param index of the element among all, which tells it from copies of it
	 */
	String part(PreparedElement element, int index) {
		Whose known = whose(element);
		return known != null ? known.part() : element.element().getId() + '@' + index;
	}

	/** The id of the job that an element belongs to. */
	String job(PreparedElement element) {
		Whose known = whose(element);
		return known != null ? known.job() : content.job().getId();
	}

	private Whose whose(PreparedElement element) {
		return whose.isEmpty() ? null : whose.get(Lying.of(element));
	}

	/** All that lie on it, by id; the one whose sheet it is first. */
	Map<String, Job> jobs() {
		return jobs;
	}

	/** The ids of all that lie on it, each before those that it is a repeat of: what worked for these works for it. */
	List<String> jobsAndOriginals() {
		return jobs.entrySet().stream()
				.flatMap(job -> Stream.concat(Stream.of(job.getKey()), job.getValue().getRepeats().stream())).distinct().toList();
	}

	/** In mm² by job: of the room that its parts take up on the sheet; empty where no parts are known. */
	Map<String, Double> rooms() {
		return rooms;
	}
}
