package org.frisket.ui.sheets.internal.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.Price;
import org.frisket.run.RunCost;
import org.frisket.run.play.Playback;
import org.frisket.run.play.RunWords;

/** What a run takes, in words. */
final class CostWords {

	private CostWords() {
	}

	/** Time, stops and line of the whole run. */
	static String totals(Playback playback) {
		return NLS.bind(Messages.CostWords_totals, new Object[] { RunWords.duration(playback.seconds()),
				RunWords.stops(playback.stops()), RunWords.metres(playback.mm()) });
	}

	/** Where time and money go, a sentence a line; shares only where several jobs lie on the sheet. */
	static List<String> lines(RunCost cost) {
		List<String> lines = new ArrayList<>();
		RunCost.Seconds seconds = cost.seconds();
		lines.add(NLS.bind(Messages.CostWords_seconds, new Object[] { RunWords.duration(seconds.strokes()),
				RunWords.duration(seconds.travel()), RunWords.duration(seconds.lifts()), RunWords.duration(seconds.stops()) }));
		cost.material().ifPresent(price -> lines.add(NLS.bind(Messages.CostWords_material, RunCost.text(price))));
		cost.time().ifPresent(price -> lines.add(NLS.bind(Messages.CostWords_time, RunCost.text(price))));
		if (cost.material().isPresent() && cost.time().isPresent()) {
			cost.total().ifPresent(price -> lines.add(NLS.bind(Messages.CostWords_total, RunCost.text(price))));
		}
		if (cost.shares().size() > 1) {
			cost.shares().forEach(share -> lines.add(share(share)));
		}
		return lines;
	}

	private static String share(RunCost.Share share) {
		Optional<Price> total = share.total();
		return total.isEmpty() ? NLS.bind(Messages.CostWords_share, share.name(), RunWords.duration(share.seconds()))
				: NLS.bind(Messages.CostWords_shareMoney,
						new Object[] { share.name(), RunWords.duration(share.seconds()), RunCost.text(total.get()) });
	}
}
