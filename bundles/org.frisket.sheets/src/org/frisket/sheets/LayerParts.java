package org.frisket.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Element;
import org.frisket.model.Group;
import org.frisket.model.Jobs;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.WeedLines;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The parts of one layer: what of its pieces and lines belongs together. */
final class LayerParts {

	private static final double FLATTENING = 0.25;

	private final PreparedJob job;
	private final PreparedLayer layer;
	private final boolean apart;
	private final Tolerance tolerance;
	private final Monitor monitor;
	private final List<Atom> atoms = new ArrayList<>();
	private final Map<String, List<Integer>> atomsOf = new LinkedHashMap<>();
	private Bonds bonds;
	/** Atoms that lie across, or touch, another one of their set. */
	private final List<Integer> contacts = new ArrayList<>();

	LayerParts(PreparedJob job, PreparedLayer layer, boolean apart, Tolerance tolerance, Monitor monitor) {
		this.job = job;
		this.layer = layer;
		this.apart = apart;
		this.tolerance = tolerance;
		this.monitor = monitor;
	}

	List<SheetPart> parts() {
		int order = 0;
		for (PreparedElement element : layer.shown()) {
			take(element, order++);
		}
		bonds = new Bonds(atoms.size());
		if (!apart) {
			atomsOf.values().forEach(this::unite);
			groups();
		}
		weedLines();
		nearPieces();
		pens();
		Map<Integer, List<Atom>> sets = new TreeMap<>();
		for (int i = 0; i < atoms.size(); i++) {
			sets.computeIfAbsent(bonds.first(i), first -> new ArrayList<>()).add(atoms.get(i));
		}
		boolean[] contact = new boolean[atoms.size()];
		contacts.forEach(i -> contact[bonds.first(i)] = true);
		List<SheetPart> parts = new ArrayList<>();
		sets.forEach((first, set) -> {
			// what is only printed, and lies on no part, is nothing that comes off
			if (set.stream().anyMatch(atom -> atom.kind != Atom.Kind.PRINT)) {
				parts.add(part(set, contact[first]));
			}
		});
		return parts;
	}

	private void take(PreparedElement element, int order) {
		monitor.check();
		List<Operation> operations = element.operations();
		if (operations.isEmpty()) {
			return;
		}
		boolean printed = operations.stream().allMatch(operation -> operation.getKind() == OperationKind.PRINT);
		boolean cut = operations.stream().map(Operation::getKind).anyMatch(LayerParts::severs);
		Atom.Kind kind = printed ? Atom.Kind.PRINT : cut ? Atom.Kind.CUT : Atom.Kind.LINE;
		double deviation = tolerance.mm() * FLATTENING;
		List<Integer> own = new ArrayList<>();
		for (int number = 1; number <= element.region().pieces().size(); number++) {
			own.add(atoms.size());
			atoms.add(Atom.of(kind, element, order, number, deviation));
		}
		for (Contour line : printed ? List.<Contour>of() : element.lines()) {
			if (!line.isEmpty()) {
				own.add(atoms.size());
				atoms.add(Atom.of(element, order, line, deviation));
			}
		}
		atomsOf.put(element.element().getId(), own);
	}

	private static boolean severs(OperationKind kind) {
		return kind == OperationKind.CUT || kind == OperationKind.KISS_CUT || kind == OperationKind.PERFORATE;
	}

	private void unite(List<Integer> together) {
		together.forEach(each -> bonds.unite(together.get(0), each));
	}

	private List<Integer> atomsOf(List<? extends Element> elements) {
		return elements.stream().flatMap(each -> atomsOf.getOrDefault(each.getId(), List.of()).stream()).toList();
	}

	private void groups() {
		for (Group group : job.job().getGroups()) {
			unite(atomsOf(Jobs.elements(group)));
		}
	}

	/** Weed lines make sense only round what they were made for. */
	private void weedLines() {
		for (PreparedElement element : layer.shown()) {
			List<Integer> lines = atomsOf(List.of(element.element()));
			if (element.element() instanceof WeedLines weeding && !lines.isEmpty()) {
				unite(lines);
				atomsOf(weeding.getAround()).forEach(around -> bonds.unite(lines.get(0), around));
			}
		}
	}

	/** What lies in or across a piece that is cut round belongs to it. */
	private void nearPieces() {
		STRtree tree = new STRtree();
		for (int i = 0; i < atoms.size(); i++) {
			if (atoms.get(i).isCut()) {
				tree.insert(atoms.get(i).envelope(), i);
			}
		}
		for (int i = 0; i < atoms.size(); i++) {
			monitor.check();
			Atom atom = atoms.get(i);
			for (Object found : tree.query(atom.envelope())) {
				int other = (Integer) found;
				Atom piece = atoms.get(other);
				if (other != i && (!atom.isCut() || piece.element != atom.element && isLarger(other, i))) {
					relate(other, i);
				}
			}
		}
	}

	private boolean isLarger(int one, int other) {
		double a = atoms.get(one).polygon().getArea();
		double b = atoms.get(other).polygon().getArea();
		return a > b || a == b && one < other;
	}

	private void relate(int outer, int inner) {
		Atom piece = atoms.get(outer);
		Atom atom = atoms.get(inner);
		if (piece.prepared().covers(atom.geometry())) {
			bonds.unite(outer, inner);
			atom.enclosed = true;
			return;
		}
		if (!piece.prepared().intersects(atom.geometry())) {
			return;
		}
		Envelope both = piece.envelope().intersection(atom.envelope());
		if (atom.isCut() && Math.min(both.getWidth(), both.getHeight()) <= tolerance.mm()) {
			// neighbours on a grid, which need no closer look
			contacts.add(inner);
			return;
		}
		Geometry common = OverlayNGRobust.overlay(piece.geometry(), atom.geometry(), OverlayNG.INTERSECTION);
		boolean area = atom.kind != Atom.Kind.LINE;
		double shared = area ? common.getArea() : common.getLength();
		double whole = area ? atom.geometry().getArea() : atom.geometry().getLength();
		// neighbours may share an edge to within the tolerance
		double slack = area ? tolerance.mm() * Math.min(piece.geometry().getLength(), atom.geometry().getLength())
				: Math.min(2 * tolerance.mm(), whole / 2);
		if (whole - shared <= slack) {
			bonds.unite(outer, inner);
			atom.enclosed = true;
		} else if (shared > slack) {
			bonds.unite(outer, inner);
			contacts.add(inner);
		} else if (atom.isCut()) {
			contacts.add(inner);
		}
	}

	/** Lines on no part: those of an element stay together, and so does what is drawn across each other. */
	private void pens() {
		boolean[] cut = new boolean[atoms.size()];
		for (int i = 0; i < atoms.size(); i++) {
			cut[bonds.first(i)] |= atoms.get(i).isCut();
		}
		boolean[] attached = new boolean[atoms.size()];
		for (int i = 0; i < atoms.size(); i++) {
			attached[i] = cut[bonds.first(i)];
		}
		STRtree boxes = new STRtree();
		Map<Integer, Bounds> drawn = new LinkedHashMap<>();
		for (List<Integer> own : atomsOf.values()) {
			List<Integer> free = own.stream().filter(i -> !attached[i]).toList();
			unite(free);
			free.stream().filter(i -> atoms.get(i).kind == Atom.Kind.LINE)
					.forEach(i -> drawn.merge(free.get(0), atoms.get(i).bounds, Bounds::with));
		}
		drawn.forEach((first, bounds) -> boxes.insert(Atom.envelope(bounds), first));
		for (int i = 0; i < atoms.size(); i++) {
			Bounds box = drawn.containsKey(i) ? drawn.get(i) : atoms.get(i).bounds;
			if (!attached[i] && (drawn.containsKey(i) || atoms.get(i).kind == Atom.Kind.PRINT)) {
				for (Object other : boxes.query(Atom.envelope(box))) {
					bonds.unite(i, (Integer) other);
				}
			}
		}
	}

	private SheetPart part(List<Atom> set, boolean contact) {
		List<PreparedElement> elements = new ArrayList<>();
		Map<PreparedElement, List<Atom>> byElement = new LinkedHashMap<>();
		set.stream().sorted((a, b) -> Integer.compare(a.order, b.order))
				.forEach(atom -> byElement.computeIfAbsent(atom.element, each -> new ArrayList<>()).add(atom));
		byElement.forEach((element, own) -> elements.add(
				own.size() == atomsOf.get(element.element().getId()).size() ? element : only(element, own)));
		return new SheetPart(key(set), job.job(), layer.layer(), elements,
				new PartRoom(set, contact, tolerance, monitor).region());
	}

	private static PreparedElement only(PreparedElement element, List<Atom> own) {
		return new PreparedElement(element.element(),
				new Region(own.stream().filter(atom -> atom.piece != null).map(atom -> atom.piece).toList()),
				own.stream().filter(atom -> atom.line != null).map(atom -> atom.line).toList(), element.uncleaned(),
				element.part(), element.xHeight(), element.findings());
	}

	private String key(List<Atom> set) {
		List<Atom> cut = set.stream().filter(Atom::isCut).toList();
		if (cut.isEmpty()) {
			return set.stream().filter(atom -> atom.kind == Atom.Kind.LINE).findFirst().orElseThrow().element.element()
					.getId();
		}
		List<Atom> roots = cut.stream().filter(atom -> !atom.enclosed).toList();
		boolean one = apart ? roots.size() == 1
				: roots.stream().map(atom -> atom.element).distinct().count() == 1;
		Atom named = one ? roots.get(0) : cut.get(0);
		return SheetPart.key(named.element.element().getId(), apart ? named.number : 0);
	}
}
