package org.frisket.run.play;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Runs in words; tests run in English. */
class RunWordsTest {

	@Test
	void durationsAreRoundedToWhatMatters() {
		assertEquals("0 s", RunWords.duration(0.4));
		assertEquals("59 s", RunWords.duration(59.4));
		assertEquals("1 min 0 s", RunWords.duration(59.6));
		assertEquals("4 min 10 s", RunWords.duration(250));
		assertEquals("1 h 0 min", RunWords.duration(3599.7));
		assertEquals("2 h 5 min", RunWords.duration(7500));
	}

	@Test
	void clockNeverRunsAhead() {
		assertEquals("0:00", RunWords.clock(0.99));
		assertEquals("4:10", RunWords.clock(250));
		assertEquals("1:00:09", RunWords.clock(3609));
	}

	@Test
	void stateSaysWhatTheMachineIsAt() {
		Playback run = SampleRun.two();
		assertEquals("On the way to stroke 2 of 5", RunWords.state(run, run.at(run.timeOf(1) - 1.05), "Ferry blade"));
		assertEquals("Setting down for stroke 2 of 5", RunWords.state(run, run.at(run.timeOf(1) - 0.5), "Ferry blade"));
		assertEquals("Stroke 2 of 5", RunWords.state(run, run.at(run.timeOf(1)), "Ferry blade"));
		assertEquals("Change the tool: Ferry blade", RunWords.state(run, run.at(run.legs().get(1).from() + 1), "Ferry blade"));
		assertEquals("Done", RunWords.state(run, run.at(run.seconds()), "Ferry blade"));
		assertEquals("1 stop", RunWords.stops(run.stops()));
		assertEquals("no stop", RunWords.stops(0));
		assertEquals("2 stops", RunWords.stops(2));
		assertEquals("0.16 m", RunWords.metres(run.mm()));
	}
}
