package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.PieceLocator;
import org.frisket.geometry.stencil.Choice;
import org.frisket.geometry.stencil.HeldIsland;
import org.frisket.geometry.stencil.Stencil;
import org.frisket.model.Bridge;
import org.frisket.model.IslandBridges;
import org.frisket.model.Wording;
import org.frisket.prepare.Severity;
import org.frisket.prepare.internal.Shape;
import org.frisket.typography.SetText;
import org.frisket.typography.join.BridgeWish;
import org.frisket.typography.join.Bridges;

/** Bridges that a wording has by decision, between letters and round the insides of letters. */
final class HandBridges {

	/** What falls out because its bridges were taken away. */
	static final String ISLAND_LOOSE = "island-loose";
	static final String BRIDGE_IDLE = "bridge-idle";

	private HandBridges() {
	}

	static Bridges.Bridged set(Region lettering, Wording wording, WordingText text, UnaryOperator<Region> body,
			List<Shape.Remark> remarks, Tolerance tolerance, Monitor monitor) {
		List<BridgeWish> wishes = new ArrayList<>();
		for (Bridge bridge : wording.getBridges()) {
			if (bridge.getWidth() > 0 && Double.isFinite(bridge.getWidth())) {
				wishes.add(wish(bridge));
			} else {
				remarks.add(new Shape.Remark(BRIDGE_IDLE, Severity.CAUTION, lettering.bounds().centre(),
						Messages.HandBridges_noWidth, Messages.HandBridges_noWidthCure));
			}
		}
		SetText placed = text.outlined();
		Bridges.Bridged bridged = Bridges.of(text.outlinedSet(), placed, lettering, wishes, body, tolerance, monitor);
		for (Bridges.Outcome outcome : bridged.outcomes()) {
			outcome.failure().ifPresent(failure -> remarks.add(idle(outcome, failure, lettering, placed)));
		}
		return bridged;
	}

	private static BridgeWish wish(Bridge bridge) {
		Optional<BridgeWish.Ends> ends = bridge.isPlaced()
				? Optional.of(new BridgeWish.Ends(new Point(bridge.getOneX(), bridge.getOneY()),
						new Point(bridge.getOtherX(), bridge.getOtherY())))
				: Optional.empty();
		return new BridgeWish(bridge.getOne(), bridge.getOther(), bridge.getWidth(), ends);
	}

	private static Shape.Remark idle(Bridges.Outcome outcome, Bridges.Failure failure, Region lettering, SetText text) {
		Point place = outcome.gap().map(gap -> gap.from().towards(gap.to(), 0.5)).orElse(lettering.bounds().centre());
		String message = switch (failure) {
		case NO_LETTER -> NLS.bind(Messages.HandBridges_noLetter, outcome.wish().one() + 1, outcome.wish().other() + 1);
		case NO_GAP -> NLS.bind(Messages.HandBridges_noGap, character(text, outcome.wish().one()),
				character(text, outcome.wish().other()));
		case MISSED -> NLS.bind(Messages.HandBridges_missed, character(text, outcome.wish().one()),
				character(text, outcome.wish().other()));
		};
		return new Shape.Remark(BRIDGE_IDLE, Severity.CAUTION, lettering.isEmpty() ? Point.ORIGIN : place, message,
				failure == Bridges.Failure.MISSED ? Messages.HandBridges_missedCure : Messages.HandBridges_idleCure);
	}

	private static String character(SetText text, int index) {
		return text.letters().stream().filter(letter -> letter.start() <= index && index < letter.end()).findFirst()
				.map(text::characters).orElse("");
	}

	/** The same letters as a stencil, if they are to be one. */
	static HeldLetters stencilled(HeldLetters held, Wording wording, WordingText text, Tolerance tolerance,
			Monitor monitor) {
		if (!(wording.getStencil() > 0) || held.region().isEmpty()) {
			return held;
		}
		List<Contour> holes = held.region().pieces().stream().flatMap(piece -> piece.holes().stream()).toList();
		List<IslandOwner> owners = IslandOwner.of(holes.stream().map(hole -> hole.bounds().centre()).toList(),
				text.outlinedSet(), text.outlined());
		List<Choice> choices = new ArrayList<>();
		// the latest decision counts, and of one about all islands and one about this, the latter
		List<IslandBridges> decided = new ArrayList<>(wording.getIslands());
		for (int i = 0; i < holes.size(); i++) {
			IslandOwner owner = owners.get(i);
			Point place = new PieceLocator(new Piece(holes.get(i).reversed(), List.of()), tolerance).inside();
			decided.stream().filter(d -> owner.isMeant(d.getIndex(), d.getIsland(), text.outlined()))
					.reduce((a, b) -> a.getIsland() >= 0 && b.getIsland() < 0 ? a : b)
					.ifPresent(d -> choices.add(choice(d, place, owner)));
		}
		Stencil stencil = Stencil.of(held.region(), wording.getStencil(), choices, tolerance, monitor);
		List<Shape.Remark> remarks = new ArrayList<>(held.remarks());
		for (int i = 0; i < stencil.islands().size(); i++) {
			HeldIsland island = stencil.islands().get(i);
			if (island.loose()) {
				IslandOwner owner = owners.get(i);
				SetText placed = text.outlined();
				remarks.add(new Shape.Remark(ISLAND_LOOSE, Severity.CAUTION, island.middle(),
						NLS.bind(Messages.HandBridges_loose,
								owner.letter() < 0 ? "" : placed.characters(placed.letters().get(owner.letter()))),
						Messages.HandBridges_looseCure));
			}
		}
		return new HeldLetters(held.clean(), stencil.region(), held.bridges(), stencil.islands(), owners, remarks);
	}

	private static Choice choice(IslandBridges decided, Point place, IslandOwner owner) {
		List<Double> angles = decided.getAt().stream().map(at -> Math.toRadians(at.getAngle()) + owner.turn()).toList();
		return new Choice(place, OptionalInt.of(Math.max(0, Math.min(Choice.MOST, decided.getCount()))), angles);
	}
}
