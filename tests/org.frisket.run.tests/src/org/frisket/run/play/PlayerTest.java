package org.frisket.run.play;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.frisket.material.tools.ToolKind;
import org.frisket.toolpath.Stage;
import org.junit.jupiter.api.Test;

/** Going through a run: the clock is wound by the test. */
class PlayerTest {

	private final Playback run = SampleRun.two();
	private final Player player = new Player();

	private void play() {
		player.show(run);
		player.toggle();
	}

	@Test
	void timeGoesByWhilePlayingOnly() {
		player.show(run);
		player.advance(3);
		assertEquals(0, player.seconds());
		player.toggle();
		player.advance(3);
		assertEquals(3, player.seconds());
		player.toggle();
		player.advance(3);
		assertEquals(3, player.seconds());
	}

	@Test
	void speedsGoUpAndDownAndStayWithinTheirEnds() {
		play();
		player.slower();
		assertEquals(1, player.speed());
		for (int expected : new int[] { 4, 16, 64, 64 }) {
			player.faster();
			assertEquals(expected, player.speed());
		}
		player.nextSpeed();
		assertEquals(1, player.speed());
		player.faster();
		player.advance(0.5);
		assertEquals(2, player.seconds());
	}

	@Test
	void atTheEndItStopsAndBeginsAnew() {
		play();
		player.advance(run.seconds() + 100);
		assertEquals(run.seconds(), player.seconds());
		assertFalse(player.isPlaying());
		assertTrue(player.now().isOver());
		player.toggle();
		assertTrue(player.isPlaying());
		assertEquals(0, player.seconds());
	}

	@Test
	void jumpsAndSeeksStayWithinTheRun() {
		player.show(run);
		player.previous(Leap.STROKE);
		assertEquals(0, player.seconds());
		player.seek(1e9);
		player.next(Leap.PART);
		assertEquals(run.seconds(), player.seconds());
		player.seek(-1);
		assertEquals(0, player.seconds());
		player.next(Leap.TOOL);
		assertEquals(run.legs().get(1).from(), player.seconds());
	}

	@Test
	void calmPlayerShowsStrokesWhole() {
		player.setCalm(true);
		play();
		player.advance(run.timeOf(0) + 1);
		assertEquals(0, player.now().share(), 1e-9);
		assertEquals(run.timeOf(0) + 1, player.seconds(), 1e-9);
		player.toggle();
		assertTrue(player.now().share() > 0, "who stops looks at the place itself");
	}

	@Test
	void anotherRunOfTheSameSheetIsShownWhereTheLastOneWas() {
		play();
		player.seek(run.seconds() / 2);
		Playback longer = new SampleRun().leg(Stage.CUT, ToolKind.BLADE, new SampleRun.Cut("a", 0, 0, 3000)).playback();
		player.replace(longer);
		assertEquals(longer.seconds() / 2, player.seconds(), 1e-9);
		assertTrue(player.isPlaying());
		player.show(null);
		assertFalse(player.isPlaying());
		player.toggle();
		assertFalse(player.isPlaying(), "there is nothing to play");
	}
}
