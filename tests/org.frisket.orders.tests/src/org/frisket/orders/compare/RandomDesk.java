package org.frisket.orders.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.Edit;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.GroupElements;
import org.frisket.editing.elements.UngroupElements;
import org.frisket.editing.layers.RemoveLayer;
import org.frisket.model.Element;
import org.frisket.model.Group;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.model.Wording;

/** Somebody who does anything that can be done to a job. The same seed does the same, also to another copy. */
final class RandomDesk {

	private final Random random;
	/** What is touched at all. */
	private final Predicate<EObject> own;

	RandomDesk(long seed) {
		this(seed, each -> true);
	}

	RandomDesk(long seed, Predicate<EObject> own) {
		random = new Random(seed);
		this.own = own;
	}

	/** Whatever it is, the job is sound afterwards. */
	void work(Job job, int steps) {
		for (int i = 0; i < steps; i++) {
			switch (random.nextInt(12)) {
			case 0 -> add(job);
			case 1 -> apply(new DeleteElements(some(job)));
			case 2 -> restack(job);
			case 3 -> apply(new GroupElements(some(job)));
			case 4 -> ungroup(job);
			case 5 -> follow(job);
			case 6 -> layers(job);
			case 7 -> placements(job);
			case 8 -> guides(job);
			case 9 -> operations(job);
			default -> attribute(job);
			}
		}
	}

	/** Values of attributes only, so that two desks with different things of their own are never in each other's way. */
	void change(Job job, int steps) {
		for (int i = 0; i < steps; i++) {
			attribute(job);
		}
	}

	private void apply(Edit edit) {
		if (edit.canApply()) {
			edit.apply();
		}
	}

	private <T> T of(List<T> all) {
		return all.get(random.nextInt(all.size()));
	}

	private List<Element> some(Job job) {
		List<Element> all = Jobs.elements(job);
		return all.isEmpty() ? List.of() : all.stream().filter(each -> random.nextInt(3) == 0).limit(2).toList();
	}

	private void add(Job job) {
		if (job.getLayers().isEmpty()) {
			return;
		}
		Layer layer = of(job.getLayers());
		List<Element> some = some(job);
		switch (random.nextInt(3)) {
		case 0 -> Jobs.addWording(layer, "word " + random.nextInt(100), 5 + random.nextInt(20));
		case 1 -> Jobs.addOutline(layer, "M0 0L" + random.nextInt(100) + " 0L0 9Z");
		default -> {
			if (!some.isEmpty()) {
				Jobs.addMat(layer, random.nextInt(9), some);
			}
		}
		}
	}

	private void restack(Job job) {
		if (job.getLayers().isEmpty()) {
			return;
		}
		Layer from = of(job.getLayers());
		Layer to = of(job.getLayers());
		if (!from.getElements().isEmpty()) {
			Element element = of(from.getElements());
			int at = random.nextInt(to.getElements().size() + (from == to ? 0 : 1));
			if (from == to) {
				((EList<Element>) to.getElements()).move(at, element);
			} else {
				to.getElements().add(at, element);
			}
		}
	}

	private void ungroup(Job job) {
		List<Group> groups = Jobs.groups(job);
		if (!groups.isEmpty()) {
			apply(new UngroupElements(Jobs.elements(of(groups))));
		}
	}

	private void follow(Job job) {
		List<Mat> mats = Jobs.elements(job).stream().filter(Mat.class::isInstance).map(Mat.class::cast).toList();
		List<Outline> paths = Jobs.elements(job).stream().filter(Outline.class::isInstance).map(Outline.class::cast).toList();
		Jobs.elements(job).stream().filter(Wording.class::isInstance).map(Wording.class::cast)
				.filter(each -> random.nextBoolean() && !paths.isEmpty()).findFirst().ifPresent(each -> each.setPath(of(paths)));
		if (!mats.isEmpty()) {
			Mat mat = of(mats);
			for (Element source : some(job)) {
				if (!Jobs.leadsTo(source, mat) && !mat.getBehind().contains(source)) {
					mat.getBehind().add(0, source);
				}
			}
		}
	}

	private void layers(Job job) {
		switch (random.nextInt(4)) {
		case 0 -> Jobs.addLayer(job, "layer " + random.nextInt(9));
		case 1 -> {
			if (job.getLayers().size() > 1) {
				apply(new RemoveLayer(of(job.getLayers())));
			}
		}
		default -> {
			if (job.getLayers().size() > 1) {
				((EList<Layer>) job.getLayers()).move(0, of(job.getLayers()));
			}
		}
		}
	}

	private void placements(Job job) {
		if (job.getSheets().isEmpty() || random.nextInt(6) == 0) {
			Sheet sheet = Jobs.addSheet(job, "card", 300, 200);
			for (Element element : some(job)) {
				long laid = job.getSheets().stream().flatMap(each -> each.getPlacements().stream())
						.filter(each -> element.getId().equals(each.getPart())).mapToInt(Placement::getCopy).max().orElse(0);
				Jobs.addPlacement(sheet, element.getId(), random.nextInt(300), random.nextInt(200), 0);
				sheet.getPlacements().get(sheet.getPlacements().size() - 1).setCopy((int) laid + 1);
			}
			return;
		}
		Sheet sheet = of(job.getSheets());
		if (!sheet.getPlacements().isEmpty() && random.nextBoolean()) {
			sheet.getPlacements().remove(random.nextInt(sheet.getPlacements().size()));
		} else if (!sheet.getPlacements().isEmpty()) {
			of(sheet.getPlacements()).setX(random.nextInt(300));
		}
	}

	private void guides(Job job) {
		if (job.getGuides().size() > 1 && random.nextBoolean()) {
			job.getGuides().remove(random.nextInt(job.getGuides().size()));
		} else {
			Jobs.addGuide(job, random.nextBoolean(), random.nextInt(200));
		}
	}

	private void operations(Job job) {
		for (Element element : some(job)) {
			Jobs.addOperation(element, of(List.of(OperationKind.values())));
		}
	}

	private void attribute(Job job) {
		List<EObject> all = new ArrayList<>(List.of(job));
		for (Iterator<EObject> each = job.eAllContents(); each.hasNext();) {
			EObject next = each.next();
			if (next instanceof Layer || next instanceof Element || next instanceof Group || next instanceof Sheet) {
				all.add(next);
			}
		}
		EObject object = of(all);
		List<EAttribute> attributes = object.eClass().getEAllAttributes().stream()
				.filter(each -> each != object.eClass().getEIDAttribute() && !each.isMany()
						&& !each.getName().equals("locked")).toList();
		EAttribute attribute = of(attributes);
		Object value = value(attribute);
		if (value != null && own.test(object)) {
			object.eSet(attribute, value);
		}
	}

	private Object value(EAttribute attribute) {
		Class<?> type = attribute.getEAttributeType().getInstanceClass();
		int number = 1 + random.nextInt(90);
		if (attribute.getEAttributeType() instanceof EEnum literals) {
			Enumerator literal = of(literals.getELiterals()).getInstance();
			return literal;
		}
		if (type == double.class) {
			return number / 4.0;
		}
		if (type == int.class) {
			return number;
		}
		if (type == boolean.class) {
			return random.nextBoolean();
		}
		if (type == String.class) {
			return "w" + number;
		}
		if (type == Matrix.class) {
			return Matrix.translation(number, -number);
		}
		return type == LocalDate.class ? LocalDate.of(2031, 5, 1).plusDays(number) : null;
	}
}
