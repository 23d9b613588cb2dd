/**
 * Repairs of artwork from anywhere, step by step. A step is a {@link org.frisket.geometry.repair.RepairStep}, contributed
 * to the extension point {@code org.frisket.geometry.repairSteps}; each tells what it did, where and how much.
 * {@link org.frisket.geometry.repair.RepairCourse} takes artwork through several of them within one tolerance. The
 * built-in ones are in {@code internal.repair}.
 */
package org.frisket.geometry.repair;
