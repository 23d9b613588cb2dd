/**
 * Repairs of artwork from anywhere, step by step. A step is a {@link org.frisket.geometry.repair.RepairStep}, contributed
 * to the extension point {@code org.frisket.geometry.repairSteps}; each tells what it did, where and how much.
 */
package org.frisket.geometry.repair;
