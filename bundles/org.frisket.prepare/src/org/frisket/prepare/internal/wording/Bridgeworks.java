package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.measure.Gap;
import org.frisket.geometry.stencil.HeldIsland;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.Bridgework;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.join.Bridges;
import org.frisket.typography.join.LetterFrame;

/** What was held, for those who look at it. */
public final class Bridgeworks {

	private Bridgeworks() {
	}

	public static Bridgework of(Wording wording, WordingText text, HeldLetters held) {
		SetText set = text.outlinedSet();
		SetText placed = text.outlined();
		List<Bridgework.LetterAt> letters = new ArrayList<>();
		for (int i = 0; i < placed.letters().size(); i++) {
			Letter letter = placed.letters().get(i);
			letters.add(new Bridgework.LetterAt(letter.start(), letter.end(), letter.outline(),
					LetterFrame.of(placed, set.letters().get(i), letter)));
		}
		return new Bridgework(letters, spans(wording, held), islands(held, placed));
	}

	private static List<Bridgework.Span> spans(Wording wording, HeldLetters held) {
		List<Bridgework.Span> spans = new ArrayList<>();
		int made = 0;
		for (int i = 0; i < wording.getBridges().size(); i++) {
			if (!(wording.getBridges().get(i).getWidth() > 0) || made >= held.bridges().size()) {
				continue;
			}
			Bridges.Outcome outcome = held.bridges().get(made++);
			if (outcome.gap().isPresent()) {
				Gap gap = outcome.gap().get();
				spans.add(new Bridgework.Span(i, gap.from(), gap.to(), outcome.wish().width()));
			}
		}
		return spans;
	}

	private static List<Bridgework.IslandAt> islands(HeldLetters held, SetText placed) {
		List<Bridgework.IslandAt> islands = new ArrayList<>();
		for (int i = 0; i < held.islands().size(); i++) {
			HeldIsland island = held.islands().get(i);
			IslandOwner owner = held.owners().get(i);
			islands.add(new Bridgework.IslandAt(owner.letter() < 0 ? -1 : placed.letters().get(owner.letter()).start(),
					owner.number(), owner.turn(), island.edge(), island.middle(), island.bridges().stream()
							.map(bridge -> new Bridgework.Stub(bridge.inner(), bridge.outer(), bridge.width())).toList(),
					island.loose()));
		}
		return islands;
	}
}
