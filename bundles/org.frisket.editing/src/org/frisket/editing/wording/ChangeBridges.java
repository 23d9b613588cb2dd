package org.frisket.editing.wording;

import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Bridge;
import org.frisket.model.BridgeAngle;
import org.frisket.model.FrisketFactory;
import org.frisket.model.IslandBridges;
import org.frisket.model.Wording;

/** Changes the bridges of a wording: those between its letters, and those that hold the insides of letters in a stencil. */
public final class ChangeBridges extends RecordingEdit {

	/** The angle of a whole turn, to which bridges are kept. */
	private static final double TURN = 360;

	/**
	 * Where a bridge between letters stands; places as in {@link Bridge}.
	 *
	 * @param one   index of a character of the one letter
	 * @param other index of a character of the other
	 */
	public record Place(int one, double oneX, double oneY, int other, double otherX, double otherY) {

		boolean isFinite() {
			return Double.isFinite(oneX + oneY + otherX + otherY);
		}

		void give(Bridge bridge) {
			bridge.setOne(one);
			bridge.setOther(other);
			bridge.setPlaced(true);
			bridge.setOneX(oneX);
			bridge.setOneY(oneY);
			bridge.setOtherX(otherX);
			bridge.setOtherY(otherY);
		}
	}

	private final Wording wording;
	private final Predicate<Wording> differs;
	private final Consumer<Wording> change;

	private ChangeBridges(String name, Wording wording, Predicate<Wording> differs, Consumer<Wording> change) {
		super(name);
		this.wording = wording;
		this.differs = differs;
		this.change = change;
	}

	private static boolean isLength(double mm) {
		return Double.isFinite(mm) && mm > 0;
	}

	private static boolean has(Wording wording, int number) {
		return number >= 0 && number < wording.getBridges().size();
	}

	/** Adds a bridge between letters, where it is placed; {@code width} in mm is positive. */
	public static ChangeBridges add(Wording wording, Place place, double width) {
		return new ChangeBridges(Messages.ChangeBridges_add, wording, w -> isLength(width) && place.isFinite(), w -> {
			Bridge bridge = FrisketFactory.INSTANCE.createBridge();
			place.give(bridge);
			bridge.setWidth(width);
			w.getBridges().add(bridge);
		});
	}

	/** Moves one of the bridges between letters elsewhere. */
	public static ChangeBridges move(Wording wording, int number, Place place) {
		return new ChangeBridges(Messages.ChangeBridges_move, wording, w -> has(w, number) && place.isFinite(),
				w -> place.give(w.getBridges().get(number)));
	}

	/** Takes one of the bridges between letters away. */
	public static ChangeBridges remove(Wording wording, int number) {
		return new ChangeBridges(Messages.ChangeBridges_remove, wording, w -> has(w, number),
				w -> w.getBridges().remove(number));
	}

	/** Makes all bridges between letters so wide, in mm. */
	public static ChangeBridges widths(Wording wording, double width) {
		return new ChangeBridges(Messages.ChangeBridges_width, wording,
				w -> isLength(width) && w.getBridges().stream().anyMatch(b -> b.getWidth() != width),
				w -> w.getBridges().forEach(b -> b.setWidth(width)));
	}

	/** Makes the bridges of the stencil so wide, in mm; 0 makes it no stencil. */
	public static ChangeBridges stencil(Wording wording, double width) {
		return new ChangeBridges(Messages.ChangeBridges_stencil, wording,
				w -> Double.isFinite(width) && width >= 0 && width != w.getStencil(), w -> w.setStencil(width));
	}

	/** What is done to the bridges of an island, as the edit is called. */
	public enum Change {

		ADD(Messages.ChangeBridges_add), MOVE(Messages.ChangeBridges_move), REMOVE(Messages.ChangeBridges_remove);

		private final String name;

		Change(String name) {
			this.name = name;
		}
	}

	/**
	 * Lets an island be held at these angles and nowhere else; at none, it falls out.
	 *
	 * @param index  of a character of the letter
	 * @param island number among those of the letter
	 * @param angles in degrees clockwise from the letter's baseline
	 */
	public static ChangeBridges island(Change change, Wording wording, int index, int island, List<Double> angles) {
		return new ChangeBridges(change.name, wording,
				w -> index >= 0 && island >= 0 && angles.stream().allMatch(Double::isFinite), w -> {
					IslandBridges held = held(w, index, island);
					held.setCount(angles.size());
					held.getAt().clear();
					for (double angle : angles) {
						BridgeAngle at = FrisketFactory.INSTANCE.createBridgeAngle();
						at.setAngle((angle % TURN + TURN) % TURN);
						held.getAt().add(at);
					}
				});
	}

	/** Lets all islands of a letter be held by so many bridges each, wherever they were. */
	public static ChangeBridges count(Wording wording, int index, int count) {
		return new ChangeBridges(Messages.ChangeBridges_count, wording, w -> index >= 0 && count >= 0, w -> {
			w.getIslands().removeIf(held -> held.getIndex() == index);
			held(w, index, -1).setCount(count);
		});
	}

	/** Holds all insides of letters by the rule again. */
	public static ChangeBridges byRule(Wording wording) {
		return new ChangeBridges(Messages.ChangeBridges_byRule, wording, w -> !w.getIslands().isEmpty(),
				w -> w.getIslands().clear());
	}

	private static IslandBridges held(Wording wording, int index, int island) {
		return wording.getIslands().stream().filter(h -> h.getIndex() == index && h.getIsland() == island).findFirst()
				.orElseGet(() -> {
					IslandBridges held = FrisketFactory.INSTANCE.createIslandBridges();
					held.setIndex(index);
					held.setIsland(island);
					wording.getIslands().add(held);
					return held;
				});
	}

	@Override
	public boolean canApply() {
		return Targets.free(wording) && differs.test(wording);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(wording);
	}

	@Override
	protected void change() {
		change.accept(wording);
	}
}
