package org.frisket.ui.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.IJobManager;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** An order book in a studio that is there for one test only. */
abstract class StudioOfOrders {

	protected Path home;
	protected StudioFolder studio;

	@BeforeEach
	void chooseStudio() throws Exception {
		home = Files.createTempDirectory("orders");
		studio = new StudioFolder(home.resolve("studio"));
		Studio.choose(Optional.of(studio.path()));
		fill();
		OpenBench.bringToFront(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell());
		OrderDesk.get().refresh();
	}

	/** What is in it before anybody looks. */
	abstract void fill() throws Exception;

	@AfterEach
	void usualStudio() throws IOException {
		Arrays.stream(Display.getCurrent().getShells()).filter(each -> !each.isDisposed() && each.getData() instanceof Dialog)
				.filter(each -> each.getParent() != null).forEach(Shell::close);
		for (var view : page().getViewReferences()) {
			if (view.getId().startsWith("org.frisket.ui.orders.")) {
				if (page().getPartState(view) == IWorkbenchPage.STATE_MAXIMIZED) {
					page().setPartState(view, IWorkbenchPage.STATE_RESTORED);
				}
				page().hideView(view);
			}
		}
		quiet();
		StudioChoice.apply();
		try (Stream<Path> all = Files.walk(home)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.deleteIfExists(each);
			}
		}
	}

	/** Nothing is done at the store any more, and what came of it is seen. */
	static void quiet() {
		IJobManager jobs = Job.getJobManager();
		Screen.waitUntil("nothing is done at the store",
				() -> Arrays.stream(jobs.find(null)).noneMatch(StoreJob.class::isInstance));
		Screen.settle();
	}

	static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}

	/** A view alone on the page, so that all of it can be seen. */
	@SuppressWarnings("unchecked")
	static <V extends IViewPart> V show(String id) throws Exception {
		IViewPart view = page().showView(id);
		page().activate(view);
		var reference = page().findViewReference(id);
		if (page().getPartState(reference) != IWorkbenchPage.STATE_MAXIMIZED) {
			page().toggleZoom(reference);
		}
		quiet();
		return (V) view;
	}

	/** The workbench learns a little later what is selected, and a key before that would be lost. */
	static void waitUntilOffered(String command) {
		ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
		Screen.waitUntil(command + " is offered", () -> commands.getCommand(command).isEnabled());
	}

	/** Types over what is in a field, as a person does. */
	static void type(Text field, String text) {
		Screen.waitUntil("the field listens", () -> field.isFocusControl() || field.setFocus());
		Screen.settle();
		Screen.key("ctrl+a");
		Screen.type(text);
		Screen.waitUntil(text + " is typed", () -> field.getText().equals(text));
	}

	static List<String> read(Shell shell) {
		return Dialogs.all(shell).map(Dialogs::text).toList();
	}

	static Shell opened(String title) {
		Screen.waitUntil("it is asked: " + title, () -> Dialogs.isOpen(title));
		Shell shell = Dialogs.shell(title);
		OpenBench.bringToFront(shell);
		return shell;
	}
}
