package org.frisket.ui.orders.internal.place;

import javax.crypto.spec.PBEKeySpec;

import org.eclipse.equinox.security.storage.provider.IPreferencesContainer;
import org.eclipse.equinox.security.storage.provider.PasswordProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * Locks kept passwords by a word that people are asked for, where the machine has no keyring. Of several locks it is
 * the last that is taken.
 */
public final class MasterPassword extends PasswordProvider {

	private boolean wasWrong;

	@Override
	public PBEKeySpec getPassword(IPreferencesContainer container, int type) {
		if (!PlatformUI.isWorkbenchRunning()) {
			return null;
		}
		boolean fresh = (type & (CREATE_NEW_PASSWORD | PASSWORD_CHANGE)) != 0;
		PBEKeySpec[] answer = new PBEKeySpec[1];
		Display display = PlatformUI.getWorkbench().getDisplay();
		display.syncExec(() -> {
			MasterPasswordDialog dialog = new MasterPasswordDialog(display.getActiveShell(), fresh, wasWrong);
			if (dialog.open() == Window.OK) {
				answer[0] = new PBEKeySpec(dialog.word());
			}
		});
		wasWrong = false;
		return answer[0];
	}

	@Override
	public boolean retryOnError(Exception e, IPreferencesContainer container) {
		wasWrong = true;
		return true;
	}
}
