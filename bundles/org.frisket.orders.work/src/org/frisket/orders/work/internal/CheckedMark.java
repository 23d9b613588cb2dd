package org.frisket.orders.work.internal;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.OrderException;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunMark;
import org.frisket.orders.work.RunPiece;

/** Whether what somebody says of a run can be. */
public final class CheckedMark {

	/** More than anybody means. */
	private static final int MOST = 1_000_000;
	private static final BigDecimal MOST_AMOUNT = BigDecimal.valueOf(MOST);

	private CheckedMark() {
	}

	/** @throws OrderException with a sentence for people, if it cannot */
	public static void check(PlannedRun run, RunMark mark) throws OrderException {
		if (run.next().isEmpty() || run.closed().contains(mark.step())) {
			throw new OrderException(NLS.bind(Messages.CheckedMark_done, run.number()));
		}
		Set<Object> seen = new HashSet<>();
		for (RunMark.Count count : mark.pieces()) {
			RunPiece piece = run.pieces().stream().filter(each -> each.job().equals(count.job()) && each.of().equals(count.of()))
					.findFirst().orElseThrow(() -> new OrderException(
							NLS.bind(Messages.CheckedMark_noPiece, run.number(), count.of())));
			if (!seen.add(piece)) {
				throw new OrderException(NLS.bind(Messages.CheckedMark_twice, piece.number()));
			}
			check(run, mark, count, piece);
		}
		for (BigDecimal amount : mark.used().values()) {
			if (amount.signum() < 0 || amount.compareTo(MOST_AMOUNT) > 0) {
				throw new OrderException(NLS.bind(Messages.CheckedMark_amount, amount.toPlainString(), MOST));
			}
		}
		Optional<BigDecimal> seconds = mark.seconds();
		if (seconds.isPresent() && (seconds.get().signum() < 0 || seconds.get().compareTo(MOST_AMOUNT) > 0)) {
			throw new OrderException(NLS.bind(Messages.CheckedMark_time, seconds.get().toPlainString()));
		}
		boolean nothing = mark.used().values().stream().allMatch(amount -> amount.signum() == 0)
				&& mark.pieces().stream().allMatch(count -> count.made() == 0 && count.spoiled() == 0);
		if (nothing && !mark.closes()) {
			throw new OrderException(NLS.bind(Messages.CheckedMark_nothing, run.number()));
		}
	}

	private static void check(PlannedRun run, RunMark mark, RunMark.Count count, RunPiece piece) throws OrderException {
		int left = piece.left(mark.step());
		if (count.made() < 0 || count.spoiled() < 0 || count.spoiled() > MOST) {
			throw new OrderException(NLS.bind(Messages.CheckedMark_below, piece.number()));
		}
		if (count.made() > left) {
			throw new OrderException(NLS.bind(Messages.CheckedMark_tooMany,
					new Object[] { run.number(), left, piece.number(), count.made() }));
		}
	}
}
