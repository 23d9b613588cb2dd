/**
 */
package org.frisket.model;

import java.util.List;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Island Bridges</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How the inside of a letter is held in a stencil.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.IslandBridges#getIndex <em>Index</em>}</li>
 *   <li>{@link org.frisket.model.IslandBridges#getIsland <em>Island</em>}</li>
 *   <li>{@link org.frisket.model.IslandBridges#getCount <em>Count</em>}</li>
 *   <li>{@link org.frisket.model.IslandBridges#getAt <em>At</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface IslandBridges extends EObject {
	/**
	 * Returns the value of the '<em><b>Index</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Index in the text of a character of the letter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Index</em>' attribute.
	 * @see #setIndex(int)
	 * @generated
	 */
	int getIndex();

	/**
	 * Sets the value of the '{@link org.frisket.model.IslandBridges#getIndex <em>Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Index</em>' attribute.
	 * @see #getIndex()
	 * @generated
	 */
	void setIndex(int value);

	/**
	 * Returns the value of the '<em><b>Island</b></em>' attribute.
	 * The default value is <code>"-1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of the island among those of the letter, from the top down; -1 for all of them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Island</em>' attribute.
	 * @see #setIsland(int)
	 * @generated
	 */
	int getIsland();

	/**
	 * Sets the value of the '{@link org.frisket.model.IslandBridges#getIsland <em>Island</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Island</em>' attribute.
	 * @see #getIsland()
	 * @generated
	 */
	void setIsland(int value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"2"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many bridges hold it; 0 for none, so that it falls out.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(int)
	 * @generated
	 */
	int getCount();

	/**
	 * Sets the value of the '{@link org.frisket.model.IslandBridges#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(int value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.BridgeAngle}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where they stand; if there are any, they decide instead of the count.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' containment reference list.
	 * @generated
	 */
	List<BridgeAngle> getAt();

} // IslandBridges
