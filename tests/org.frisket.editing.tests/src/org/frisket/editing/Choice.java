package org.frisket.editing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.arranging.Box;
import org.frisket.editing.layers.DuplicateLayer;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Guide;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Laying;
import org.frisket.model.MarkKind;
import org.frisket.model.Mat;
import org.frisket.model.MeasuredMark;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Picture;
import org.frisket.model.Placement;
import org.frisket.model.RegisterMark;
import org.frisket.model.Sheet;
import org.frisket.model.TextChange;
import org.frisket.model.Turning;
import org.frisket.model.Wording;

/** What a user might pick and type. */
record Choice(Random random) {

	int below(int bound) {
		return random.nextInt(bound);
	}

	boolean coin() {
		return random.nextBoolean();
	}

	double length() {
		return Math.round(random.nextDouble() * 200) / 10.0;
	}

	double signed() {
		return random.nextInt(5) == 0 ? 0 : Math.round(random.nextGaussian() * 300) / 10.0;
	}

	double factor() {
		return new double[] { 0.5, 0.8, 1, 1.25, 2 }[below(5)];
	}

	String word() {
		return of("", "Tide", "Harbour Lane", "two\nlines", "Ünder & <over>");
	}

	List<Double> list(double... numbers) {
		List<Double> list = new ArrayList<>();
		for (double number : numbers) {
			list.add(number);
		}
		return list;
	}

	@SafeVarargs
	final <T> T of(T... values) {
		return values[below(values.length)];
	}

	<T> T of(List<? extends T> values) {
		return values.get(below(values.size()));
	}

	/** None to five elements, of locked and hidden layers too. */
	List<Element> some(Job job) {
		List<Element> rest = new ArrayList<>(Jobs.elements(job));
		List<Element> some = new ArrayList<>();
		for (int i = below(6); i > 0 && !rest.isEmpty(); i--) {
			some.add(rest.remove(below(rest.size())));
		}
		return some;
	}

	/** Some elements, or at times whole groups. */
	List<Element> someOrWhole(Job job) {
		List<Element> some = some(job);
		List<Element> whole = some.stream().flatMap(element -> Jobs.groupOf(element).stream())
				.flatMap(group -> Jobs.elements(group).stream()).distinct().toList();
		return below(4) > 0 || whole.isEmpty() ? some : whole;
	}

	List<Layer> layers(Job job) {
		return coin() ? List.copyOf(job.getLayers()) : List.of(this.<Layer>of(job.getLayers()));
	}

	<E extends Element> List<E> all(Class<E> kind, Job job) {
		return Jobs.elements(job).stream().filter(kind::isInstance).map(kind::cast).toList();
	}

	/** One that is read from a file of its own, or kept in the job; with an edge or without. */
	Picture picture() {
		Picture picture = FrisketFactory.INSTANCE.createPicture();
		picture.setLink(coin() ? "quay.png" : null);
		picture.setImage(picture.getLink() == null ? image() : null);
		picture.setWidth(1 + length());
		picture.setHeight(1 + length());
		picture.setEdge(coin() ? FrisketFactory.INSTANCE.createPictureEdge() : null);
		Jobs.addOperation(picture, OperationKind.PRINT);
		return picture;
	}

	ImageBytes image() {
		return ImageBytes.of(new byte[] { (byte) below(4) });
	}

	List<Mat> mats(Job job) {
		return Jobs.elements(job).stream().filter(Mat.class::isInstance).map(Mat.class::cast).toList();
	}

	/** Some letters of one or two characters each. */
	List<TextChange.Part> letters(Wording wording) {
		List<TextChange.Part> letters = new ArrayList<>();
		int length = wording.getText() == null ? 0 : wording.getText().length();
		for (int at = below(3); at < length; at += 1 + below(4)) {
			letters.add(new TextChange.Part(at, Math.min(length, at + 1 + below(2))));
		}
		return letters;
	}

	Edit wording(Job job, Function<Wording, Edit> edit) {
		return any(Wording.class, Jobs.elements(job), edit);
	}

	Edit outline(Job job, Function<Outline, Edit> edit) {
		return any(Outline.class, Jobs.elements(job), edit);
	}

	Edit sheet(Job job, Function<Sheet, Edit> edit) {
		return any(Sheet.class, job.getSheets(), edit);
	}

	/** Some of those on one sheet, or of all. */
	List<Placement> placements(Job job) {
		List<Sheet> sheets = job.getSheets();
		List<Placement> rest = new ArrayList<>();
		(coin() || sheets.isEmpty() ? sheets : List.of(this.<Sheet>of(sheets)))
				.forEach(sheet -> rest.addAll(sheet.getPlacements()));
		List<Placement> some = new ArrayList<>();
		for (int i = below(6); i > 0 && !rest.isEmpty(); i--) {
			some.add(rest.remove(below(rest.size())));
		}
		return some;
	}

	/** The old ones, some of them, or new ones, with some parts. */
	List<Sheet> newSheets(Job job) {
		List<Sheet> sheets = new ArrayList<>();
		if (coin()) {
			job.getSheets().stream().filter(sheet -> coin()).limit(3).forEach(sheets::add);
		}
		for (int i = 1 + below(2); i > 0; i--) {
			Sheet sheet = FrisketFactory.INSTANCE.createSheet();
			sheet.setWidth(length());
			sheet.setHeight(length());
			for (Element element : some(job)) {
				Jobs.addPlacement(sheet, element.getId() + of("", "#1"), length(), length(), of(0, 90, 180));
			}
			Jobs.addPlacement(sheet, of("e0", "e99"), length(), length(), 0);
			sheets.add(sheet);
		}
		return sheets;
	}

	List<RegisterMark> marks() {
		List<RegisterMark> marks = new ArrayList<>();
		for (int i = below(4); i > 0; i--) {
			RegisterMark mark = FrisketFactory.INSTANCE.createRegisterMark();
			mark.setKind(of(MarkKind.values()));
			mark.setX(length());
			mark.setY(length());
			marks.add(mark);
		}
		return marks;
	}

	List<MeasuredMark> measured(Sheet sheet) {
		List<MeasuredMark> measured = new ArrayList<>();
		for (int i = 0; i < sheet.getMarks().size(); i++) {
			MeasuredMark mark = FrisketFactory.INSTANCE.createMeasuredMark();
			mark.setMark(i);
			mark.setX(length());
			mark.setY(length());
			mark.setBack(random.nextBoolean());
			measured.add(mark);
		}
		return measured;
	}

	Guest guest() {
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob(of("guest", "guest-2", "guest-3"));
		guest.setTitle(word());
		return guest;
	}

	Laying laying() {
		Laying laying = FrisketFactory.INSTANCE.createLaying();
		laying.setGap(length());
		laying.setTurning(of(Turning.values()));
		return laying;
	}

	Edit guide(Job job, Function<Guide, Edit> edit) {
		return any(Guide.class, job.getGuides(), edit);
	}

	<T> Edit any(Class<T> type, Job job, Function<T, Edit> edit) {
		return any(type, Jobs.elements(job), edit);
	}

	private <T> Edit any(Class<T> type, List<?> all, Function<T, Edit> edit) {
		List<T> some = all.stream().filter(type::isInstance).map(type::cast).toList();
		return some.isEmpty() ? null : edit.apply(of(some));
	}

	Map<Element, Box> boxes(Job job) {
		Collection<Element> elements = some(job);
		Map<Element, Box> boxes = new LinkedHashMap<>();
		for (Element element : elements) {
			double x = element.getTransform().e();
			double y = element.getTransform().f();
			boxes.put(element, new Box(x, y, x + length(), y + length()));
		}
		return boxes;
	}

	Optional<Job> fragment(Job job) {
		List<Element> some = some(job);
		return some.isEmpty() ? Optional.empty() : JobFragment.read(JobFragment.write(some));
	}

	/** The job as another program may have left its file. */
	Job changedOutside(Job job) {
		Job outside = EcoreUtil.copy(job);
		outside.setTitle(word());
		if (!job.getLayers().isEmpty() && coin()) {
			new DuplicateLayer(outside.getLayers().get(0), "Copy").apply();
		}
		return outside;
	}

	Outline outline() {
		Outline outline = FrisketFactory.INSTANCE.createOutline();
		outline.setPathData(path());
		return outline;
	}

	String path() {
		return "M0 0L" + length() + " 0L0 " + length() + "Z";
	}

	Wording newWording() {
		Wording wording = FrisketFactory.INSTANCE.createWording();
		wording.setHeight(1 + length());
		return wording;
	}
}
