package org.frisket.orders.compare;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.Group;
import org.frisket.model.Guide;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.Operation;
import org.frisket.model.Outline;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.model.Wording;
import org.frisket.orders.internal.features.FeatureWords;

/** Says in words what one side has done to something. */
final class ChangeWords {

	/** What is told by more than a few words is told as changed only. */
	private static final int LONGEST = 60;
	/** Numbers that are no lengths. */
	private static final Set<String> PLAIN = Set.of("lineSpacing", "mitreLimit", "arcAngle", "hatchAngle", "quantity");
	private static final Set<String> ANGLES = Set.of("arcAngle", "hatchAngle");

	private final Snapshot base;
	private final Snapshot now;
	private final DoubleFunction<String> length;
	private final FeatureWords words = FeatureWords.in(Locale.getDefault());

	ChangeWords(Snapshot base, Snapshot now, DoubleFunction<String> length) {
		this.base = base;
		this.now = now;
		this.length = length;
	}

	/** In the user's language, with two decimals at most. */
	static String number(double value) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMaximumFractionDigits(2);
		format.setGroupingUsed(false);
		return format.format(value + 0.0);
	}

	/** What something is called. @param several whether it stands for all of its kind */
	static String subject(Node node, boolean several) {
		EObject object = node.object();
		if (object instanceof Job) {
			return Messages.ChangeWords_job;
		}
		if (object instanceof Placement) {
			return several ? Messages.ChangeWords_placements : Messages.ChangeWords_placement;
		}
		if (object instanceof Layer layer) {
			return named(Messages.ChangeWords_layer, layer.getName(), layer.getId());
		}
		if (object instanceof Wording wording) {
			return named(Messages.ChangeWords_wording, wording.getText(), wording.getId());
		}
		if (object instanceof Group group) {
			return named(Messages.ChangeWords_group, group.getName(), group.getId());
		}
		if (object instanceof Sheet sheet) {
			return named(Messages.ChangeWords_sheet, sheet.getName(), sheet.getId());
		}
		if (object instanceof Guest guest) {
			return named(Messages.ChangeWords_guest, guest.getTitle(), guest.getJob());
		}
		if (object instanceof Guide guide) {
			return NLS.bind(Messages.ChangeWords_guide, number(guide.getAt()));
		}
		return object instanceof Element element ? named(kind(element), element.getName(), element.getId())
				: node.key();
	}

	private static String kind(Element element) {
		if (element instanceof Outline) {
			return Messages.ChangeWords_outline;
		}
		return switch (element.eClass().getName()) {
		case "Mat" -> Messages.ChangeWords_mat;
		case "Picture" -> Messages.ChangeWords_picture;
		case "Combination" -> Messages.ChangeWords_combination;
		case "WeedLines" -> Messages.ChangeWords_weedLines;
		default -> Messages.ChangeWords_element;
		};
	}

	private static String named(String kind, String name, String id) {
		return name == null || name.isBlank() ? NLS.bind(Messages.ChangeWords_numbered, kind, id)
				: NLS.bind(Messages.ChangeWords_named, kind, brief(name));
	}

	private static String brief(String text) {
		String line = text.strip().replaceAll("\\s*\\R\\s*", " / ");
		return line.codePointCount(0, line.length()) <= LONGEST ? line
				: line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…";
	}

	/** What was done to one thing, or to several that are told of as one. */
	Difference of(List<String> keys) {
		if (keys.size() == 1 && !isPlacement(keys.get(0))) {
			return of(keys.get(0));
		}
		List<Difference> all = keys.stream().map(this::of).filter(Difference::isAny).toList();
		return all.isEmpty() ? Difference.NONE
				: new Difference(Difference.Kind.CHANGED, List.of(NLS.bind(Messages.ChangeWords_parts, all.size())));
	}

	private boolean isPlacement(String key) {
		return base.node(key).or(() -> now.node(key)).filter(node -> node.object() instanceof Placement).isPresent();
	}

	private Difference of(String key) {
		Node before = base.nodes().get(key);
		Node after = now.nodes().get(key);
		if (before == null || after == null) {
			return before == after ? Difference.NONE
					: new Difference(before == null ? Difference.Kind.ADDED : Difference.Kind.REMOVED, List.of());
		}
		Set<String> said = new LinkedHashSet<>();
		after.values().forEach((name, value) -> {
			if (!Objects.equals(before.values().get(name), value)) {
				said.add(said(name, before.values().get(name), value));
			}
		});
		if (isRestacked(after)) {
			said.add(Messages.ChangeWords_order);
		}
		return said.isEmpty() ? Difference.NONE : new Difference(Difference.Kind.CHANGED, List.copyOf(said));
	}

	/** Whether what was within it before and still is stands in another order. */
	private boolean isRestacked(Node node) {
		return node.object().eClass().getEAllReferences().stream().filter(Snapshot::holdsNodes)
				// where a part lies is not said by its number
				.filter(reference -> !reference.getName().equals("placements")).anyMatch(reference -> {
					Place place = new Place(node.key(), reference.getName());
					List<String> before = new ArrayList<>(base.order(place));
					List<String> after = new ArrayList<>(now.order(place));
					before.retainAll(Set.copyOf(after));
					after.retainAll(Set.copyOf(before));
					return !before.equals(after);
				});
	}

	private String said(String name, Object before, Object after) {
		switch (name) {
		case Node.PLACE:
			return NLS.bind(Messages.ChangeWords_moved, now.node(((Place) after).owner())
					.map(owner -> subject(owner, false)).orElse(""));
		case Node.GROUP:
			return Messages.ChangeWords_grouped;
		case Node.UNKNOWN:
			return Messages.ChangeWords_unknown;
		default:
			break;
		}
		if (before instanceof Matrix old && after instanceof Matrix matrix) {
			return moved(old, matrix);
		}
		String word = words.feature(name);
		String was = value(name, before);
		String is = value(name, after);
		return was == null || is == null || was.equals(is) ? NLS.bind(Messages.ChangeWords_changed, word)
				: NLS.bind(Messages.ChangeWords_fromTo, new Object[] { word, was, is });
	}

	private String moved(Matrix old, Matrix matrix) {
		boolean shifted = old.a() == matrix.a() && old.b() == matrix.b() && old.c() == matrix.c()
				&& old.d() == matrix.d();
		if (!shifted) {
			return Messages.ChangeWords_turned;
		}
		List<String> ways = new ArrayList<>();
		way(ways, matrix.e() - old.e(), Messages.ChangeWords_right, Messages.ChangeWords_left);
		way(ways, matrix.f() - old.f(), Messages.ChangeWords_down, Messages.ChangeWords_up);
		return NLS.bind(Messages.ChangeWords_shifted, String.join(", ", ways));
	}

	private void way(List<String> ways, double by, String there, String back) {
		if (by != 0) {
			ways.add(NLS.bind(by > 0 ? there : back, length.apply(Math.abs(by))));
		}
	}

	/** Null where it is too much for words. */
	private String value(String name, Object value) {
		if (value == null || value instanceof Parts none && none.objects().isEmpty()) {
			return Messages.ChangeWords_none;
		}
		if (value instanceof Parts parts) {
			return parts.objects().stream().allMatch(each -> each instanceof Operation || each instanceof FontRef)
					? parts.objects().stream().map(this::part).collect(Collectors.joining(", ")) : null;
		}
		if (value instanceof Boolean yes) {
			return yes ? Messages.ChangeWords_yes : Messages.ChangeWords_no;
		}
		if (value instanceof Enumerator literal) {
			return words.value(literal.getClass().getSimpleName(), literal.getLiteral());
		}
		if (value instanceof Number number) {
			return ANGLES.contains(name) ? number(number.doubleValue()) + "°"
					: PLAIN.contains(name) || !(value instanceof Double) ? number(number.doubleValue())
							: length.apply(number.doubleValue());
		}
		if (value instanceof String text) {
			return text.length() > LONGEST || name.equals("pathData") ? null
					: NLS.bind(Messages.ChangeWords_quoted, brief(text));
		}
		if (value instanceof Links links) {
			return links.keys().isEmpty() ? Messages.ChangeWords_none : links.keys().stream()
					.map(key -> now.node(key).or(() -> base.node(key)).map(node -> subject(node, false)).orElse(key))
					.collect(Collectors.joining(", "));
		}
		return value instanceof java.time.LocalDate ? value.toString() : null;
	}

	private String part(EObject part) {
		return part instanceof Operation operation
				? words.value(operation.getKind().getClass().getSimpleName(), operation.getKind().getLiteral())
				: String.valueOf(((FontRef) part).getName());
	}
}
