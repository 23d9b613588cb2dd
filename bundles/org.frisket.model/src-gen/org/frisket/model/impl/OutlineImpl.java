/**
 */
package org.frisket.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.frisket.model.Outline;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Outline</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.OutlineImpl#getPathData <em>Path Data</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OutlineImpl extends ElementImpl implements Outline {
	/**
	 * The default value of the '{@link #getPathData() <em>Path Data</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPathData()
	 * @generated
	 * @ordered
	 */
	protected static final String PATH_DATA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPathData() <em>Path Data</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPathData()
	 * @generated
	 * @ordered
	 */
	protected String pathData = PATH_DATA_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OutlineImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.OUTLINE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPathData() {
		return pathData;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPathData(String newPathData) {
		String oldPathData = pathData;
		pathData = newPathData;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.OUTLINE__PATH_DATA, oldPathData, pathData));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.OUTLINE__PATH_DATA:
				return getPathData();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case FrisketPackageImpl.OUTLINE__PATH_DATA:
				setPathData((String)newValue);
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
			case FrisketPackageImpl.OUTLINE__PATH_DATA:
				setPathData(PATH_DATA_EDEFAULT);
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
			case FrisketPackageImpl.OUTLINE__PATH_DATA:
				return PATH_DATA_EDEFAULT == null ? pathData != null : !PATH_DATA_EDEFAULT.equals(pathData);
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
		result.append(" (pathData: ");
		result.append(pathData);
		result.append(')');
		return result.toString();
	}

} //OutlineImpl
