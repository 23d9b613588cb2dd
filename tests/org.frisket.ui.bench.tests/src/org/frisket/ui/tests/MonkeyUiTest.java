package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Commands, pointer and keys at random: the job stays sound, nothing is logged, and undo leads back to the start. */
class MonkeyUiTest extends OpenBench {

	/** FRISKET_ACTIONS asks for more than each run can afford. */
	private static final int ACTIONS = Integer.parseInt(System.getenv().getOrDefault("FRISKET_ACTIONS", "700"));
	/** Of so many actions one goes through the window system, which takes far longer than the others. */
	private static final int ACTIONS_PER_GESTURE = 12;
	/** Of so many actions the job is written and read after one; what has gone wrong with it does not mend itself. */
	private static final int ACTIONS_PER_READING = 5;
	private static final int MOST_ELEMENTS = 12;
	private static final String OURS = "org.frisket.ui.bench.command.";

	private final Random random = new Random(2027);
	private final List<String> logged = new ArrayList<>();
	private final ILogListener log = (status, plugin) -> {
		if (status.getSeverity() == IStatus.ERROR) {
			logged.add(status.toString());
		}
	};
	private final List<ParameterizedCommand> commands = new ArrayList<>();

	@BeforeEach
	void listenToTheLog() {
		Platform.addLogListener(log);
		// what changes the job more than once, so that it does so more often
		for (int i = 0; i < 2; i++) {
			command("nudge", "right", "1", "-10", "0.1");
			command("nudge", "down", "1", "-10");
			command("duplicate");
			command("addMat");
			command("mirror", "axis", "LEFT_RIGHT", "TOP_BOTTOM");
			command("rotate", "degrees", "90", "-90");
			command("align", "edge", "LEFT", "CENTRE", "BOTTOM");
			command("distribute", "direction", "ACROSS", "DOWN");
			command("order", "way", "FORWARD", "BOTTOM");
			command("shape", "shape", "RECTANGLE", "STAR", "ELLIPSE");
		}
		for (String zoom : List.of("zoomIn", "zoomOut", "zoomFit")) {
			command(zoom);
		}
		for (String edit : List.of("selectAll", "delete", "copy", "cut", "paste", "undo", "redo", "undo", "redo")) {
			commands.add(edit(edit));
		}
	}

	@AfterEach
	void stopListening() {
		Platform.removeLogListener(log);
	}

	private void command(String name, String... parameterAndValues) {
		var command = service(ICommandService.class).getCommand(OURS + name);
		if (parameterAndValues.length == 0) {
			commands.add(ParameterizedCommand.generateCommand(command, null));
		}
		for (int i = 1; i < parameterAndValues.length; i++) {
			Map<String, String> values = new LinkedHashMap<>();
			values.put(OURS + name + "." + parameterAndValues[0], parameterAndValues[i]);
			commands.add(ParameterizedCommand.generateCommand(command, values));
		}
	}

	private ParameterizedCommand edit(String name) {
		return ParameterizedCommand.generateCommand(
				service(ICommandService.class).getCommand("org.eclipse.ui.edit." + name), null);
	}

	private <S> S service(Class<S> type) {
		return bench.getSite().getWorkbenchWindow().getService(type);
	}

	@Test
	void anyActionsLeaveTheJobSoundAndUndoLeadsBackToTheStart() throws Exception {
		String first = text(job());
		Set<String> done = new HashSet<>();
		for (int action = 1; action <= ACTIONS;) {
			String what = action % ACTIONS_PER_GESTURE == 0 ? gesture() : act();
			if (what == null) {
				continue;
			}
			done.add(what);
			check("action " + action + ", " + what, action % ACTIONS_PER_READING == 0);
			action++;
		}
		Screen.key("Escape");
		String last = text(job());
		Set<String> all = new HashSet<>(Set.of("click", "drag", "words", "wheel"));
		commands.forEach(command -> all.add(command.getId()));
		assertEquals(all, done, "what was done at all");
		while (bench.commandStack().canRedo()) {
			bench.commandStack().redo();
			last = text(job());
		}
		while (bench.commandStack().canUndo()) {
			bench.commandStack().undo();
		}
		assertEquals(first, text(job()));
		while (bench.commandStack().canRedo()) {
			bench.commandStack().redo();
		}
		assertEquals(last, text(job()));
		while (bench.commandStack().canUndo()) {
			bench.commandStack().undo();
		}
		Screen.waitUntil("the job is worked through again", bench::isUpToDate);
		assertEquals(List.of(), logged);
	}

	/** Carries out a command; null if it is of no use just now. */
	private String act() throws Exception {
		boolean full = Jobs.elements(job()).size() > MOST_ELEMENTS;
		ParameterizedCommand command = full ? edit("delete")
				// only just after an undo, so that among all others it would hardly ever be its turn
				: bench.commandStack().canRedo() && random.nextInt(3) == 0 ? edit("redo")
						: commands.get(random.nextInt(commands.size()));
		if (full || random.nextInt(4) == 0) {
			selectSome();
		}
		if (!command.getCommand().isEnabled()) {
			return null;
		}
		service(IHandlerService.class).executeCommand(command, null);
		return command.getId();
	}

	private void selectSome() {
		List<Element> elements = Jobs.elements(job()).stream().filter(element -> random.nextInt(3) == 0).toList();
		Selection.select(bench.viewer(), elements);
	}

	/** Something that goes through the window system. */
	private String gesture() {
		Point size = canvas().getSize();
		Point from = canvas().toDisplay(20 + random.nextInt(size.x - 60), 20 + random.nextInt(size.y - 60));
		Point to = canvas().toDisplay(20 + random.nextInt(size.x - 60), 20 + random.nextInt(size.y - 60));
		switch (random.nextInt(4)) {
		case 0:
			Screen.events("mousemove", text(from.x), text(from.y), "click", "1");
			return "click";
		case 1:
			Screen.events("mousemove", text(from.x), text(from.y), "mousedown", "1", "mousemove",
					text((from.x + to.x) / 2), text((from.y + to.y) / 2), "mousemove", text(to.x), text(to.y), "mouseup", "1");
			return "drag";
		case 2:
			Screen.events("mousemove", text(from.x), text(from.y), "keydown", "ctrl", "click", random.nextBoolean() ? "4" : "5",
					"keyup", "ctrl");
			return "wheel";
		default:
			return words();
		}
	}

	private String words() {
		listen(bench);
		Screen.key("Insert");
		if (!bench.typing().isActive()) {
			return null;
		}
		Screen.events("key", "T", "i", "d", "e", "BackSpace", "Left", "n", "Escape");
		return "words";
	}

	private static String text(int number) {
		return String.valueOf(number);
	}

	/** Ids tell apart; written, read and written again the job is the same to the byte. */
	private void check(String after, boolean read) throws IOException {
		if (read) {
			byte[] bytes = JobFile.toBytes(job());
			assertEquals(new String(bytes, StandardCharsets.UTF_8), text(JobFile.load(bytes, after)), after);
		}
		List<Element> elements = Jobs.elements(job());
		assertEquals(elements.size(), elements.stream().map(Element::getId).distinct().count(), after);
		assertEquals(List.of(), logged, after);
	}

	private Job job() {
		return bench.document().job();
	}
}
