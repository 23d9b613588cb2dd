package org.frisket.sheets.imposing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.impose.Budget;
import org.frisket.impose.Ground;
import org.frisket.impose.Imposer;
import org.frisket.impose.Imposition;
import org.frisket.impose.Layout;
import org.frisket.impose.Part;
import org.frisket.impose.Placement;
import org.frisket.impose.Turning;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.PaperSize;
import org.frisket.model.Sheet;
import org.frisket.prepare.Figures;
import org.frisket.sheets.leftovers.Leftover;

/** Parts of one stock and colour, and the sheets for them. */
final class StockGroup {

	private static final int DECIMALS = 2;

	/** What a ground is, besides its size. */
	private record Source(Sheet kept, Leftover leftover) {
	}

	/** @param left copies without a place */
	record Laid(List<PlannedSheet> sheets, List<NoRoom> left) {
	}

	private final String stock;
	private final String colour;
	private final LayingChoices choices;
	private final StockSupply supply;
	private final List<Copies> copies;
	private final Map<Sheet, List<PlannedPart>> pinned;
	private final Map<Ground, Source> sources = new IdentityHashMap<>();
	private final Map<String, Copies> byId = new HashMap<>();
	private Ground whole;
	/** Once it was laid: it may be laid again, for longer. */
	private Imposer imposer;

	StockGroup(String stock, String colour, LayingChoices choices, StockSupply supply, List<Copies> copies,
			Map<Sheet, List<PlannedPart>> pinned) {
		this.stock = stock;
		this.colour = colour;
		this.choices = choices;
		this.supply = supply;
		this.copies = copies;
		this.pinned = pinned;
	}

	/** How many copies are to be laid. */
	int count() {
		return copies.stream().mapToInt(Copies::quantity).sum();
	}

	/** @param better told of each better one */
	Laid lay(Budget budget, Consumer<Laid> better, Monitor monitor) {
		if (count() == 0) {
			Laid laid = new Laid(kept(List.of(), Map.of()), List.of());
			better.accept(laid);
			return laid;
		}
		if (imposer == null) {
			imposer = new Imposer(imposition(), monitor);
		}
		Layout layout = imposer.lay(budget, each -> better.accept(laid(each)), monitor);
		return laid(layout);
	}

	private Imposition imposition() {
		sources.clear();
		byId.clear();
		whole = ground();
		List<Ground> grounds = new ArrayList<>();
		List<Placement> fixed = new ArrayList<>();
		if (whole.isRoll()) {
			pinned.keySet().stream().filter(sheet -> sheet.isRoll() && sheet.getHeight() == whole.width()).findFirst()
					.ifPresent(sheet -> {
						sources.put(whole, new Source(sheet, null));
						fix(sheet, 0, fixed);
					});
		} else {
			pinned.keySet().stream().filter(sheet -> isUsable(sheet.getWidth(), sheet.getHeight())).forEach(sheet -> {
				fix(sheet, grounds.size(), fixed);
				grounds.add(ground(sheet.getWidth(), sheet.getHeight(), new Source(sheet, null)));
			});
			for (Leftover leftover : supply.leftovers()) {
				boolean taken = pinned.keySet().stream().anyMatch(sheet -> leftover.id().equals(sheet.getLeftover()));
				if (!taken && isUsable(leftover.width(), leftover.height())) {
					grounds.add(ground(leftover.width(), leftover.height(), new Source(null, leftover)));
				}
			}
		}
		grounds.add(whole);
		return new Imposition(parts(), grounds, choices.gap(), choices.margin(), fixed);
	}

	private Ground ground(double width, double height, Source source) {
		Ground ground = new Ground(width, height, 1);
		sources.put(ground, source);
		return ground;
	}

	private boolean isUsable(double width, double height) {
		return width > 2 * choices.margin() && height > 2 * choices.margin();
	}

	private void fix(Sheet sheet, int number, List<Placement> fixed) {
		for (PlannedPart part : pinned.get(sheet)) {
			fixed.add(new Placement(new Part("", part.part().room()), number, new Point(part.x(), part.y()),
					Math.toRadians(part.turn())));
		}
	}

	private List<Part> parts() {
		Turning turning = supply.isGrained() && choices.turning().steps() > Turning.HALF.steps() ? Turning.HALF
				: choices.turning();
		List<Part> parts = new ArrayList<>();
		for (Copies each : copies) {
			if (each.quantity() > 0) {
				String id = String.valueOf(parts.size() + 1);
				byId.put(id, each);
				parts.add(new Part(id, each.part().room(), each.quantity(), turning, each.priority()));
			}
		}
		return parts;
	}

	/** A whole sheet, or the roll. */
	private Ground ground() {
		double width = choices.width();
		double height = choices.height();
		boolean roll = choices.roll();
		if (roll && height == 0) {
			height = supply.sizes().stream().filter(Format.Roll.class::isInstance).findFirst()
					.orElseThrow(() -> new IllegalArgumentException(NLS.bind(Messages.StockGroup_noRoll, name())))
					.width().doubleValue();
		} else if (!roll && (width == 0 || height == 0)) {
			Format usual = supply.sizes().isEmpty() ? PaperSize.named("A4").orElseThrow().sheet() : supply.sizes().get(0);
			roll = usual instanceof Format.Roll;
			width = usual.width().doubleValue();
			height = usual instanceof Format.Sheet sheet ? sheet.height().doubleValue() : width;
		}
		if (!isUsable(roll ? Double.POSITIVE_INFINITY : width, height)) {
			throw new IllegalArgumentException(NLS.bind(Messages.StockGroup_margin,
					new Object[] { Figures.length(choices.margin(), DECIMALS), roll ? "\u221e" : Figures.number(width, DECIMALS),
							Figures.length(height, DECIMALS) }));
		}
		return roll ? Ground.roll(height)
				: new Ground(width, height, choices.most() == 0 ? Integer.MAX_VALUE : choices.most());
	}

	private String name() {
		return stock == null ? "\u2013" : stock;
	}

	private Laid laid(Layout layout) {
		Map<Copies, Integer> next = new IdentityHashMap<>();
		List<List<PlannedPart>> parts = new ArrayList<>();
		layout.sheets().forEach(sheet -> parts.add(new ArrayList<>()));
		for (Placement placement : layout.placements()) {
			Copies each = byId.get(placement.part().id());
			if (each != null) {
				int copy = next.getOrDefault(each, 0) + 1;
				while (each.pinned().contains(copy)) {
					copy++;
				}
				next.put(each, copy);
				parts.get(placement.sheet()).add(new PlannedPart(each.job(), each.part(), copy, placement.centre().x(),
						placement.centre().y(), degrees(placement.radians()), false));
			}
		}
		Map<Sheet, List<PlannedPart>> more = new HashMap<>();
		List<PlannedSheet> fresh = new ArrayList<>();
		for (int i = 0; i < parts.size(); i++) {
			Ground ground = layout.sheets().get(i);
			Source source = sources.get(ground);
			if (source != null && source.kept() != null) {
				more.put(source.kept(), parts.get(i));
			} else if (!parts.get(i).isEmpty()) {
				fresh.add(new PlannedSheet(null, null, stock, colour,
						ground.isRoll() ? layout.usedLength() : ground.length(), ground.width(), ground.isRoll(),
						choices.margin(), choices.gap(), source == null ? null : source.leftover().id(), parts.get(i)));
			}
		}
		return new Laid(kept(fresh, withLength(more, layout)), left(layout));
	}

	/** Of the roll that was begun the used length is another one now. */
	private Map<Sheet, Grown> withLength(Map<Sheet, List<PlannedPart>> more, Layout layout) {
		Map<Sheet, Grown> grown = new HashMap<>();
		more.forEach((sheet, parts) -> grown.put(sheet, new Grown(parts,
				whole.isRoll() ? Math.max(sheet.getWidth(), layout.usedLength()) : sheet.getWidth())));
		return grown;
	}

	/** What comes on a sheet that is kept. @param width of the sheet with it */
	private record Grown(List<PlannedPart> parts, double width) {
	}

	/** The sheets that are kept, with what comes on them, before the new ones. */
	private List<PlannedSheet> kept(List<PlannedSheet> fresh, Map<Sheet, Grown> grown) {
		List<PlannedSheet> all = new ArrayList<>();
		pinned.forEach((sheet, pins) -> {
			Grown more = grown.getOrDefault(sheet, new Grown(List.of(), sheet.getWidth()));
			List<PlannedPart> parts = new ArrayList<>(pins);
			parts.addAll(more.parts());
			boolean filled = !more.parts().isEmpty();
			all.add(new PlannedSheet(sheet.getId(), sheet.getName(), sheet.getStock(), sheet.getColour(), more.width(),
					sheet.getHeight(), sheet.isRoll(), filled ? choices.margin() : sheet.getMargin(),
					filled ? choices.gap() : sheet.getGap(), sheet.getLeftover(), parts));
		});
		all.addAll(fresh);
		return all;
	}

	private static double degrees(double radians) {
		double degrees = Math.toDegrees(radians);
		// steps of 15 degrees come out even
		return Math.abs(degrees - Math.rint(degrees)) < 1e-9 ? Math.rint(degrees) : degrees;
	}

	private List<NoRoom> left(Layout layout) {
		Map<Copies, Integer> left = new LinkedHashMap<>();
		layout.left().forEach(part -> left.merge(byId.get(part.id()), part.quantity(), Integer::sum));
		List<NoRoom> all = new ArrayList<>();
		left.forEach((each, quantity) -> {
			boolean laid = layout.placements().stream().anyMatch(placement -> byId.get(placement.part().id()) == each);
			boolean tooLarge = choices.most() == 0 || whole.isRoll() || !laid && !fits(each);
			all.add(new NoRoom(each.job(), each.part(), quantity, whole.length(), whole.width(), tooLarge));
		});
		return all;
	}

	private boolean fits(Copies each) {
		double width = each.part().room().bounds().width();
		double height = each.part().room().bounds().height();
		double long1 = whole.length() - 2 * choices.margin();
		double wide = whole.width() - 2 * choices.margin();
		return width <= long1 && height <= wide || choices.turning().steps() > 2 && height <= long1 && width <= wide;
	}
}
