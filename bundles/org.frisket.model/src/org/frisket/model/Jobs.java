package org.frisket.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

/** Makes jobs and finds one's way in them. What is made here has its id and its place in the job. */
public final class Jobs {

	private static final FrisketFactory FACTORY = FrisketFactory.INSTANCE;

	private Jobs() {
	}

	/**
	 * A job with nothing in it.
	 *
	 * @throws IllegalArgumentException if the id is not {@linkplain Ids#valid(String) valid}
	 */
	public static Job create(String id, String title) {
		if (!Ids.valid(id)) {
			throw new IllegalArgumentException("not an id: '" + id + "'");
		}
		Job job = FACTORY.createJob();
		job.setId(id);
		job.setTitle(title);
		return job;
	}

	/** A new layer above the others. */
	public static Layer addLayer(Job job, String name) {
		Layer layer = FACTORY.createLayer();
		layer.setId(Ids.nextLayer(job));
		layer.setName(name);
		job.getLayers().add(layer);
		return layer;
	}

	/** A new wording above the layer's other elements; {@code height} is that of a capital H in mm. */
	public static Wording addWording(Layer layer, String text, double height) {
		Wording wording = FACTORY.createWording();
		wording.setText(text);
		wording.setHeight(height);
		return add(layer, wording);
	}

	/** A new outline above the layer's other elements; {@code pathData} is in SVG's grammar, in mm. */
	public static Outline addOutline(Layer layer, String pathData) {
		Outline outline = FACTORY.createOutline();
		outline.setPathData(pathData);
		return add(layer, outline);
	}

	/**
	 * A new picture of pixels above the layer's other elements, to be printed.
	 *
	 * @param mediaType what kind of file it is; may be null
	 * @param width     in mm, as is {@code height}
	 */
	public static Picture addPicture(Layer layer, ImageBytes image, String mediaType, double width, double height) {
		Picture picture = FACTORY.createPicture();
		picture.setImage(image);
		picture.setMediaType(mediaType);
		picture.setWidth(width);
		picture.setHeight(height);
		addOperation(picture, OperationKind.PRINT);
		return add(layer, picture);
	}

	/** A new mat above the layer's other elements that stands {@code distance} mm outside those it follows. */
	public static Mat addMat(Layer layer, double distance, List<? extends Element> behind) {
		Mat mat = FACTORY.createMat();
		mat.setDistance(distance);
		mat.getBehind().addAll(behind);
		return add(layer, mat);
	}

	private static <E extends Element> E add(Layer layer, E element) {
		element.setId(Ids.nextElement(required(layer)));
		layer.getElements().add(element);
		return element;
	}

	/** One more operation on the element, after those it has. */
	public static Operation addOperation(Element element, OperationKind kind) {
		Operation operation = FACTORY.createOperation();
		operation.setKind(kind);
		element.getOperations().add(operation);
		return operation;
	}

	/** A new group of elements, which leave the groups they were in directly. */
	public static Group addGroup(Job job, List<? extends Element> elements) {
		Group group = FACTORY.createGroup();
		group.setId(Ids.nextGroup(job));
		groups(job).forEach(other -> other.getElements().removeAll(elements));
		group.getElements().addAll(elements);
		job.getGroups().add(group);
		return group;
	}

	/** A new guide; {@code at} is its y in mm if it runs across, otherwise its x. */
	public static Guide addGuide(Job job, boolean across, double at) {
		Guide guide = FACTORY.createGuide();
		guide.setAcross(across);
		guide.setAt(at);
		job.getGuides().add(guide);
		return guide;
	}

	/** A new sheet after the others. @param width along x in mm, @param height along y */
	public static Sheet addSheet(Job job, String stock, double width, double height) {
		Sheet sheet = FACTORY.createSheet();
		sheet.setId(Ids.nextSheet(job));
		sheet.setStock(stock);
		sheet.setWidth(width);
		sheet.setHeight(height);
		job.getSheets().add(sheet);
		return sheet;
	}

	/**
	 * One more part on the sheet.
	 *
	 * @param part the key of a part of this job
	 * @param x    of the centre of the part's bounds in mm from the left edge of the sheet, {@code y} from its upper edge
	 * @param turn in degrees, clockwise as seen
	 */
	public static Placement addPlacement(Sheet sheet, String part, double x, double y, double turn) {
		Placement placement = FACTORY.createPlacement();
		placement.setPart(part);
		placement.setX(x);
		placement.setY(y);
		placement.setTurn(turn);
		sheet.getPlacements().add(placement);
		return placement;
	}

	/** A font as it is remembered; style and file may be null. */
	public static FontRef font(String name, String style, String digest, String file) {
		FontRef font = FACTORY.createFontRef();
		font.setName(name);
		font.setStyle(style);
		font.setDigest(digest);
		font.setFile(file);
		return font;
	}

	/** All elements of the job from the lowest to the topmost. */
	public static List<Element> elements(Job job) {
		List<Element> elements = new ArrayList<>();
		for (Layer layer : job.getLayers()) {
			elements.addAll(layer.getElements());
		}
		return elements;
	}

	/** The element with this id. */
	public static Optional<Element> element(Job job, String id) {
		return elements(job).stream().filter(element -> id.equals(element.getId())).findFirst();
	}

	/** The layer an element lies on; null if it lies on none. */
	public static Layer layerOf(Element element) {
		return ancestor(element, Layer.class);
	}

	/** The job that a layer, an element or another part belongs to; null if it belongs to none. */
	public static Job jobOf(EObject part) {
		return ancestor(part, Job.class);
	}

	/** All groups of the job, each before those within it. */
	public static List<Group> groups(Job job) {
		List<Group> groups = new ArrayList<>();
		job.getGroups().forEach(group -> addWithInner(group, groups));
		return groups;
	}

	private static void addWithInner(Group group, List<Group> groups) {
		groups.add(group);
		group.getGroups().forEach(inner -> addWithInner(inner, groups));
	}

	/** The outermost group an element is in. */
	public static Optional<Group> groupOf(Element element) {
		Job job = jobOf(element);
		return job == null ? Optional.empty()
				: job.getGroups().stream().filter(group -> elements(group).contains(element)).findFirst();
	}

	/** The elements of a group and of all groups within it. */
	public static List<Element> elements(Group group) {
		List<Group> all = new ArrayList<>();
		addWithInner(group, all);
		return all.stream().flatMap(each -> each.getElements().stream()).toList();
	}

	/** Whether an element is shown and handed out: neither it nor its layer is hidden. */
	public static boolean isShown(Element element) {
		Layer layer = layerOf(element);
		return element.isVisible() && layer != null && layer.isVisible();
	}

	/** Whether an element is protected from edits, by itself or by its layer. */
	public static boolean isLocked(Element element) {
		Layer layer = layerOf(element);
		return element.isLocked() || layer != null && layer.isLocked();
	}

	/** The mats of the job that follow this element directly, from the lowest to the topmost. */
	public static List<Mat> matsOf(Element element) {
		Job job = jobOf(element);
		List<Mat> mats = new ArrayList<>();
		if (job != null) {
			for (Element other : elements(job)) {
				if (other instanceof Mat mat && mat.getBehind().contains(element)) {
					mats.add(mat);
				}
			}
		}
		return mats;
	}

	/**
	 * What a shape without geometry of its own is made from: the elements that a mat stands behind, the parts of a
	 * combination, what weed lines go round. It is the list in the model, to be changed by edits only; none for elements
	 * of other kinds.
	 */
	public static List<Element> sources(Element element) {
		if (element instanceof Mat mat) {
			return mat.getBehind();
		}
		if (element instanceof Combination combination) {
			return combination.getParts();
		}
		return element instanceof WeedLines lines ? lines.getAround() : List.of();
	}

	/** Whether an element is of a kind that is made from others and changes with them. */
	public static boolean isFollower(Element element) {
		return element instanceof Mat || element instanceof Combination || element instanceof WeedLines;
	}

	/** A follower's kind, for messages about files. */
	public static String word(Element follower) {
		return follower instanceof Mat ? "mat" : follower instanceof Combination ? "combination" : "set of weed lines";
	}

	/** Whether an element is made from another one, directly or through others; each is made from itself. */
	public static boolean leadsTo(Element from, Element source) {
		return leadsTo(from, source, new HashSet<>());
	}

	private static boolean leadsTo(Element from, Element source, Set<Element> seen) {
		return from == source
				|| seen.add(from) && sources(from).stream().anyMatch(next -> leadsTo(next, source, seen));
	}

	/** The elements of the job that are parts of a combination, which are not worked by themselves. */
	public static Set<Element> parts(Job job) {
		Set<Element> parts = new HashSet<>();
		for (Element element : elements(job)) {
			if (element instanceof Combination combination) {
				parts.addAll(combination.getParts());
			}
		}
		return parts;
	}

	private static Job required(Layer layer) {
		Job job = jobOf(layer);
		if (job == null) {
			throw new IllegalArgumentException("the layer '" + layer.getName() + "' belongs to no job");
		}
		return job;
	}

	private static <T> T ancestor(EObject part, Class<T> type) {
		for (EObject at = part; at != null; at = at.eContainer()) {
			if (type.isInstance(at)) {
				return type.cast(at);
			}
		}
		return null;
	}
}
