/**
 */
package org.frisket.model.impl;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.frisket.model.BridgeAngle;
import org.frisket.model.IslandBridges;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Island Bridges</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.IslandBridgesImpl#getIndex <em>Index</em>}</li>
 *   <li>{@link org.frisket.model.impl.IslandBridgesImpl#getIsland <em>Island</em>}</li>
 *   <li>{@link org.frisket.model.impl.IslandBridgesImpl#getCount <em>Count</em>}</li>
 *   <li>{@link org.frisket.model.impl.IslandBridgesImpl#getAt <em>At</em>}</li>
 * </ul>
 *
 * @generated
 */
public class IslandBridgesImpl extends MinimalEObjectImpl.Container implements IslandBridges {
	/**
	 * The default value of the '{@link #getIndex() <em>Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIndex()
	 * @generated
	 * @ordered
	 */
	protected static final int INDEX_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getIndex() <em>Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIndex()
	 * @generated
	 * @ordered
	 */
	protected int index = INDEX_EDEFAULT;

	/**
	 * The default value of the '{@link #getIsland() <em>Island</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIsland()
	 * @generated
	 * @ordered
	 */
	protected static final int ISLAND_EDEFAULT = -1;

	/**
	 * The cached value of the '{@link #getIsland() <em>Island</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIsland()
	 * @generated
	 * @ordered
	 */
	protected int island = ISLAND_EDEFAULT;

	/**
	 * The default value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected static final int COUNT_EDEFAULT = 2;

	/**
	 * The cached value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected int count = COUNT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected EList<BridgeAngle> at;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected IslandBridgesImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.ISLAND_BRIDGES;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getIndex() {
		return index;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIndex(int newIndex) {
		int oldIndex = index;
		index = newIndex;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.ISLAND_BRIDGES__INDEX, oldIndex, index));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getIsland() {
		return island;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIsland(int newIsland) {
		int oldIsland = island;
		island = newIsland;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.ISLAND_BRIDGES__ISLAND, oldIsland, island));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCount() {
		return count;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(int newCount) {
		int oldCount = count;
		count = newCount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.ISLAND_BRIDGES__COUNT, oldCount, count));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<BridgeAngle> getAt() {
		if (at == null) {
			at = new EObjectContainmentEList<BridgeAngle>(BridgeAngle.class, this, FrisketPackageImpl.ISLAND_BRIDGES__AT);
		}
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case FrisketPackageImpl.ISLAND_BRIDGES__AT:
				return ((InternalEList<?>)getAt()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.ISLAND_BRIDGES__INDEX:
				return getIndex();
			case FrisketPackageImpl.ISLAND_BRIDGES__ISLAND:
				return getIsland();
			case FrisketPackageImpl.ISLAND_BRIDGES__COUNT:
				return getCount();
			case FrisketPackageImpl.ISLAND_BRIDGES__AT:
				return getAt();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case FrisketPackageImpl.ISLAND_BRIDGES__INDEX:
				setIndex((Integer)newValue);
				return;
			case FrisketPackageImpl.ISLAND_BRIDGES__ISLAND:
				setIsland((Integer)newValue);
				return;
			case FrisketPackageImpl.ISLAND_BRIDGES__COUNT:
				setCount((Integer)newValue);
				return;
			case FrisketPackageImpl.ISLAND_BRIDGES__AT:
				getAt().clear();
				getAt().addAll((Collection<? extends BridgeAngle>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.ISLAND_BRIDGES__INDEX:
				setIndex(INDEX_EDEFAULT);
				return;
			case FrisketPackageImpl.ISLAND_BRIDGES__ISLAND:
				setIsland(ISLAND_EDEFAULT);
				return;
			case FrisketPackageImpl.ISLAND_BRIDGES__COUNT:
				setCount(COUNT_EDEFAULT);
				return;
			case FrisketPackageImpl.ISLAND_BRIDGES__AT:
				getAt().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.ISLAND_BRIDGES__INDEX:
				return index != INDEX_EDEFAULT;
			case FrisketPackageImpl.ISLAND_BRIDGES__ISLAND:
				return island != ISLAND_EDEFAULT;
			case FrisketPackageImpl.ISLAND_BRIDGES__COUNT:
				return count != COUNT_EDEFAULT;
			case FrisketPackageImpl.ISLAND_BRIDGES__AT:
				return at != null && !at.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (index: ");
		result.append(index);
		result.append(", island: ");
		result.append(island);
		result.append(", count: ");
		result.append(count);
		result.append(')');
		return result.toString();
	}

} //IslandBridgesImpl
