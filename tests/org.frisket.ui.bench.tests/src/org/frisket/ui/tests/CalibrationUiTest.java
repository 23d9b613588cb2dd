package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Monitor;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.ui.bench.internal.screen.Calibration;
import org.frisket.ui.bench.internal.screen.Screens;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The screen is measured with a ruler or a card, and true size is true from then on. */
class CalibrationUiTest extends OpenBench {

	private static final int LINE_PX = 400;

	private Shell dialog;

	@BeforeEach
	void openDialog() throws Exception {
		Screens.forget(screen());
		PlatformUI.getWorkbench().getService(IHandlerService.class)
				.executeCommand("org.frisket.ui.bench.command.measureScreen", null);
		dialog = Dialogs.shell("Measure Screen");
		Screen.settle();
	}

	@AfterEach
	void forget() {
		if (!dialog.isDisposed()) {
			dialog.close();
		}
		Screens.forget(screen());
		Screen.settle();
	}

	private Monitor screen() {
		return bench.getSite().getShell().getMonitor();
	}

	private Text read() {
		return (Text) Dialogs.all(dialog).filter(each -> each instanceof Text text && text.getEditable()).findFirst()
				.orElseThrow();
	}

	private Control gauge() {
		return Dialogs.all(dialog).filter(each -> each.getClass().getSimpleName().equals("Gauge")).findFirst()
				.orElseThrow();
	}

	@Test
	void readLengthMakesTrueSizeTrue() throws Exception {
		double before = bench.zoom().pixelsPerMm();
		bringToFront(dialog);
		read().setFocus();
		Screen.type("80");
		Screen.keep(Screen.picture(dialog), "calibration-ruler");
		Screen.key("Return");
		Screen.waitUntil("the dialog is closed", dialog::isDisposed);
		Screen.settle();
		assertEquals(5, Screens.of(canvas()).pixelsPerMm(), 1e-9);
		// what is seen stays; its scale is another
		assertEquals(before, bench.zoom().pixelsPerMm(), 1e-9);
		assertEquals(before / 5, bench.zoom().scale(), 1e-9);
		listen(bench);
		Screen.key("ctrl+0");
		assertEquals(5, bench.zoom().pixelsPerMm(), 1e-9);
		assertEquals(LINE_PX, pixelOf(80, 0).x - pixelOf(0, 0).x, 1);
	}

	@Test
	void unitsCanBeTyped() {
		read().setText("4in");
		Dialogs.press(Dialogs.button(dialog, "Keep"));
		assertEquals(LINE_PX / 101.6, Screens.of(canvas()).pixelsPerMm(), 1e-9);
	}

	@Test
	void whatCannotBeIsNotKept() {
		Button keep = Dialogs.button(dialog, "Keep");
		for (String text : new String[] { "", "long", "-3", "0", "2", "5000", "1e400" }) {
			read().setText(text);
			assertFalse(keep.isEnabled(), text);
		}
		read().setText("104.5mm");
		assertTrue(keep.isEnabled());
	}

	@Test
	void cardIsMadeAsWideByDraggingAndByKeys() throws Exception {
		Button card = Dialogs.all(dialog).filter(Button.class::isInstance).map(Button.class::cast)
				.filter(each -> each.getText().contains("card")).findFirst().orElseThrow();
		bringToFront(dialog);
		Screen.click(card, 8, card.getSize().y / 2);
		assertTrue(card.getSelection());
		Canvas gauge = (Canvas) gauge();
		Screen.drag(gauge, 200, 60, 16 + 340, 60);
		Screen.key("Right");
		Screen.key("Right");
		Screen.keep(Screen.picture(dialog), "calibration-card");
		Dialogs.press(Dialogs.button(dialog, "Keep"));
		assertEquals(342 / Calibration.CARD_WIDTH, Screens.of(canvas()).pixelsPerMm(), 1e-9);
	}

	@Test
	void unknownScreenIsTakenAsTheWindowSystemSays() {
		assertTrue(Screens.measured(screen()).isEmpty());
		assertEquals(canvas().getDisplay().getDPI().x / 25.4, Screens.of(canvas()).pixelsPerMm(), 1e-9);
		Screens.keep(screen(), new Calibration(7));
		Screen.settle();
		assertEquals(7, Screens.of(canvas()).pixelsPerMm(), 1e-12);
		Screens.forget(screen());
		assertTrue(Screens.measured(screen()).isEmpty());
	}

	@Test
	void cancelKeepsNothing() {
		read().setText("80");
		Dialogs.press(Dialogs.button(dialog, "Cancel"));
		assertTrue(Screens.measured(screen()).isEmpty());
	}
}
