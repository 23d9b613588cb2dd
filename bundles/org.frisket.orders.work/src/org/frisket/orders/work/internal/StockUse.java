package org.frisket.orders.work.internal;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.ShelfException;
import org.frisket.material.ShelvedStock;
import org.frisket.material.StockShelf;
import org.frisket.orders.OrderException;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunMark;
import org.frisket.orders.work.RunSheet;
import org.frisket.orders.work.StockColour;
import org.frisket.sheets.leftovers.Leftover;
import org.frisket.sheets.leftovers.Leftovers;

/**
 * What a run takes from the stock shelf and from the leftovers, and puts back. The shelf may be wrong: what was used was
 * there, so no more than is there is counted down, and by as much it goes up again.
 */
public final class StockUse {

	private static final int USED = -1;
	private static final int KEPT = 1;

	private final Connection connection;
	private final PlannedRun run;
	private final int place;
	private final List<String> notes = new ArrayList<>();

	/** @param place of what was said of the run */
	public StockUse(Connection connection, PlannedRun run, int place) {
		this.connection = connection;
		this.run = run;
		this.place = place;
	}

	/** @return what is worth knowing, a sentence each */
	public List<String> use(RunMark mark) throws SQLException, OrderException {
		boolean worked = mark.used().values().stream().anyMatch(amount -> amount.signum() > 0)
				|| mark.pieces().stream().anyMatch(count -> count.made() + count.spoiled() > 0);
		for (Map.Entry<StockColour, BigDecimal> used : mark.used().entrySet()) {
			if (used.getValue().signum() > 0) {
				MarkRows.addUsed(connection, run.number(), place,
						new MarkRows.Used(used.getKey(), used.getValue(), countDown(used.getKey(), used.getValue())));
			}
		}
		Map<String, Integer> leftovers = new LinkedHashMap<>();
		if (worked && !MarkRows.hasLeftovers(connection, run.number(), USED)) {
			useLeftovers(leftovers);
		}
		if (mark.keepOffcuts() && !MarkRows.hasLeftovers(connection, run.number(), KEPT)) {
			keepOffcuts(leftovers);
		}
		MarkRows.addLeftovers(connection, run.number(), place, leftovers);
		return notes;
	}

	/** @return by how much */
	private BigDecimal countDown(StockColour of, BigDecimal amount) throws SQLException, OrderException {
		Optional<ShelvedStock> shelved = of.stock().isEmpty() ? Optional.empty() : StockShelf.find(connection, of.stock());
		if (shelved.isEmpty()) {
			if (!of.stock().isEmpty()) {
				notes.add(NLS.bind(Messages.StockUse_notShelved, of.stock()));
			}
			return BigDecimal.ZERO;
		}
		BigDecimal there = shelved.get().stock().onHand();
		BigDecimal counted = amount.min(there);
		if (counted.compareTo(amount) < 0) {
			notes.add(NLS.bind(Messages.StockUse_tooFew, new Object[] { shelved.get().stock().name(),
					there.stripTrailingZeros().toPlainString(), amount.stripTrailingZeros().toPlainString() }));
		}
		count(of.stock(), counted.negate());
		return counted;
	}

	private void count(String stock, BigDecimal more) throws SQLException, OrderException {
		if (more.signum() != 0) {
			try {
				StockShelf.count(connection, stock, more);
			} catch (ShelfException | IllegalArgumentException cannot) {
				throw new OrderException(cannot.getMessage(), cannot);
			}
		}
	}

	private void useLeftovers(Map<String, Integer> leftovers) throws SQLException {
		for (RunSheet sheet : run.sheets()) {
			if (sheet.isLeftover()) {
				if (Leftovers.use(connection, sheet.leftover())) {
					leftovers.put(sheet.leftover(), USED);
				} else {
					notes.add(NLS.bind(Messages.StockUse_leftoverGone, sheet.leftover()));
				}
			}
		}
	}

	private void keepOffcuts(Map<String, Integer> leftovers) throws SQLException {
		for (RunSheet sheet : run.sheets()) {
			if (sheet.hasOffcut()) {
				Leftover kept = Leftovers.keep(connection, orNull(sheet.of().stock()), orNull(sheet.of().colour()),
						sheet.offcutWidth(), sheet.offcutHeight());
				leftovers.put(kept.id(), KEPT);
				notes.add(NLS.bind(Messages.StockUse_kept, kept.id()));
			}
		}
	}

	private static String orNull(String text) {
		return text.isEmpty() ? null : text;
	}

	/** Puts back what was taken by what was said. @return what is worth knowing, a sentence each */
	public List<String> takeBack() throws SQLException, OrderException {
		for (MarkRows.Used used : MarkRows.used(connection, run.number(), place)) {
			if (used.counted().signum() > 0) {
				if (StockShelf.find(connection, used.of().stock()).isPresent()) {
					count(used.of().stock(), used.counted());
				} else {
					notes.add(NLS.bind(Messages.StockUse_gone, used.of().stock()));
				}
			}
		}
		for (MarkRows.Piece piece : MarkRows.leftovers(connection, run.number(), place)) {
			if (piece.amount() == USED) {
				Leftovers.putBack(connection, piece.leftover());
			} else if (!Leftovers.use(connection, piece.leftover())) {
				notes.add(NLS.bind(Messages.StockUse_offcutUsed, piece.leftover()));
			}
		}
		return notes;
	}
}
