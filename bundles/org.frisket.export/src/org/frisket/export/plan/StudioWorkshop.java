package org.frisket.export.plan;

import java.io.IOException;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.WorkshopSource;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.tools.Machine;
import org.frisket.run.Workshop;
import org.frisket.studio.StudioFolder;

/** A machine of a studio with what the studio knows, looked up once, when it is needed. */
public final class StudioWorkshop implements WorkshopSource {

	private final StudioFolder studio;
	private final String machine;
	private Workshop known;

	/** @param machine id of it; empty for the one most likely meant */
	public StudioWorkshop(StudioFolder studio, String machine) {
		this.studio = studio;
		this.machine = machine;
	}

	@Override
	public synchronized Workshop get() throws IOException {
		if (known == null) {
			DeskState desk = SettingsDesk.look(studio);
			known = machine.isEmpty() ? Workshop.of(desk) : new Workshop(machine(desk), desk);
		}
		return known;
	}

	private Machine machine(DeskState desk) throws IOException {
		return desk.machine(machine).orElseThrow(() -> new IOException(NLS.bind(Messages.StudioWorkshop_noMachine, machine,
				desk.offeredMachines().stream().map(Machine::id).collect(Collectors.joining(", ")))));
	}
}
