package org.frisket.orders.desk;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;

import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.model.Wording;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;

/**
 * A dozen invented jobs, so that one who has nothing in the order book yet sees what it is for. Nobody and nothing in
 * them exists.
 */
public final class SampleStudio {

	private static final String FONT = "Liberation Serif";
	private static final String REGULAR = "Regular";
	private static final String SEA = "#1f6f78";
	private static final String SAND = "#d9a441";
	private static final String PLUM = "#5b3a57";
	private static final String BRICK = "#b0452f";
	/** The hour of a day (UTC) at which a sample job was moved on. */
	private static final int MOVED_AT = 9;

	private final LocalDate today;
	private final String person;

	private SampleStudio(LocalDate today, String person) {
		this.today = today;
		this.person = person;
	}

	/**
	 * Puts the jobs into an order book, all or none.
	 *
	 * @param today  the day from which they are late, due or done
	 * @param person who does it
	 */
	public static List<Entry> fill(OrderBook book, LocalDate today, String person) throws IOException, OrderException {
		return book.takeIn(new SampleStudio(today, person).jobs(), true, person);
	}

	/** The jobs, without numbers; only their ids are drawn by lot. */
	static List<Job> jobs(LocalDate today, String person) {
		return new SampleStudio(today, person).jobs();
	}

	private List<Job> jobs() {
		return List.of(
				job(Messages.SampleStudio_lanterns, "Wenzel Brook", 14, 24, Stage.ENQUIRY, arch(60, 90), PLUM,
						"paper"),
				job(Messages.SampleStudio_menu, "Ostley Tea Room", 9, 60, Stage.ORDERED, rectangle(148, 105), SAND,
						"paper"),
				job(Messages.SampleStudio_boxes, "Brinewell Sweets", 6, 150, Stage.ORDERED, box(40), BRICK, "card"),
				job(Messages.SampleStudio_timetable, "Ostley Ferry", 4, 2, Stage.DESIGNED, words("Harbour Lane", 22),
						SEA, "film"),
				job(Messages.SampleStudio_alphabet, "Books at the Slip", 2, 1, Stage.DESIGNED, words("ABC", 80), PLUM,
						"film"),
				job(Messages.SampleStudio_anniversary, "Ostley Ferry", 1, 1, Stage.APPROVED, words("Ferry 25", 60), SEA,
						"card"),
				job(Messages.SampleStudio_place, "Ostley Tea Room", 0, 48, Stage.APPROVED, rectangle(90, 50), SAND,
						"card"),
				job(Messages.SampleStudio_tags, "Brinewell Sweets", -2, 200, Stage.PRINTED, tag(70, 35), BRICK, "card"),
				job(Messages.SampleStudio_labels, "Odila Quern", -1, 80, Stage.CUT, circle(30), SAND, "film"),
				job(Messages.SampleStudio_crane, "Lantern Night Circle", 3, 120, Stage.FINISHED, rectangle(75, 75),
						PLUM, "paper"),
				job(Messages.SampleStudio_stencil, "Wenzel Brook", -8, 3, Stage.DELIVERED, words("TEA", 45), SEA,
						"heavy-card"),
				job(Messages.SampleStudio_name, "Odila Quern", 5, 1, Stage.ON_HOLD, arch(120, 60), BRICK,
						"heavy-card"));
	}

	/** Puts its shape on a layer. */
	private interface Shape {
		void on(Layer layer);
	}

	private Job job(String title, String customer, int dueIn, int quantity, Stage stage, Shape shape, String colour,
			String stock) {
		Job job = Jobs.create(UUID.randomUUID().toString(), title);
		job.setCustomer(customer);
		job.setDue(today.plusDays(dueIn));
		job.setQuantity(quantity);
		job.setNotes(Messages.SampleStudio_note);
		Layer layer = Jobs.addLayer(job, title);
		layer.setColour(colour);
		layer.setStock(stock);
		shape.on(layer);
		layer.getElements().forEach(element -> {
			element.setName(title);
			Jobs.addOperation(element, OperationKind.CUT);
		});
		moveTo(job, stage);
		return job;
	}

	/** A stage a day, the last one yesterday. */
	private void moveTo(Job job, Stage stage) {
		job.setStage(stage);
		int last = stage == Stage.ON_HOLD ? Stage.ORDERED.ordinal() : stage.ordinal();
		Stage[] all = Stage.values();
		for (int i = 1; i <= last; i++) {
			job.getHistory().add(change(all[i - 1], all[i], last - i + 1));
		}
		if (stage == Stage.ON_HOLD) {
			job.getHistory().add(change(Stage.ORDERED, stage, 0));
		}
	}

	private StageChange change(Stage from, Stage to, int daysAgo) {
		StageChange change = FrisketFactory.INSTANCE.createStageChange();
		change.setAt(today.minusDays(daysAgo).atTime(MOVED_AT, 0).toInstant(ZoneOffset.UTC));
		change.setWho(person);
		change.setFrom(from);
		change.setTo(to);
		change.setRemark(Messages.SampleStudio_remark);
		return change;
	}

	private static Shape words(String text, double height) {
		return layer -> {
			Wording wording = Jobs.addWording(layer, text, height);
			wording.setFont(Jobs.font(FONT, REGULAR, null, null));
		};
	}

	private static Shape path(String data) {
		return layer -> {
			Outline outline = Jobs.addOutline(layer, data);
			outline.setName("");
		};
	}

	private static Shape rectangle(int width, int height) {
		return path("M 0 0 H %1$d V %2$d H 0 Z".formatted(width, height));
	}

	private static Shape arch(int width, int height) {
		return path("M 0 %2$d V %1$d A %1$d %1$d 0 0 1 %3$d %1$d V %2$d Z".formatted(width / 2,
				height + width / 2, width));
	}

	private static Shape circle(int radius) {
		return path("M 0 %1$d A %1$d %1$d 0 0 1 %2$d %1$d A %1$d %1$d 0 0 1 0 %1$d Z".formatted(radius, 2 * radius));
	}

	private static Shape tag(int width, int height) {
		int slant = height / 3;
		return path(("M %3$d 0 H %1$d V %2$d H %3$d L 0 %4$d V %3$d Z "
				+ "M %5$d %6$d A 3 3 0 0 0 %7$d %6$d A 3 3 0 0 0 %5$d %6$d Z").formatted(width, height, slant,
						height - slant, 7, height / 2, 13));
	}

	/** The net of a box without a lid. */
	private static Shape box(int side) {
		int two = 2 * side;
		int three = 3 * side;
		return path("M %1$d 0 H %2$d V %1$d H %3$d V %2$d H %2$d V %3$d H %1$d V %2$d H 0 V %1$d H %1$d Z"
				.formatted(side, two, three));
	}
}
