//! A straight beam on two supports under an even load.

use std::f64::consts::PI;

/// A span between two supports with an even load on it, in metres, newtons and pascals.
///
/// The beam rests on its supports and is not held against turning there: simple span, uniform load
/// (AISC, Manual of Steel Construction). A beam that goes on over a support bends less.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct BeamSpan {
    /// From support to support, in metres.
    pub metres: f64,
    /// The load, in newtons a metre.
    pub newtons_per_metre: f64,
    /// Modulus of elasticity times second moment of area, in newton square metres.
    pub stiffness: f64,
}

impl BeamSpan {
    /// The bending moment in the middle, `wL^2 / 8`, in newton metres.
    pub fn moment(self) -> f64 {
        self.newtons_per_metre * self.metres.powi(2) / 8.0
    }

    /// How far the middle sags, `5wL^4 / 384EI`, in metres.
    pub fn sag(self) -> f64 {
        5.0 * self.newtons_per_metre * self.metres.powi(4) / (384.0 * self.stiffness)
    }

    /// The span that sags just so many metres under the same load, in metres.
    pub fn with_sag(self, sag: f64) -> f64 {
        (384.0 * self.stiffness * sag / (5.0 * self.newtons_per_metre)).powf(0.25)
    }
}

/// The cross section of a round rod, solid or a tube.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct BeamSection {
    /// Outside diameter in metres.
    pub outside: f64,
    /// Inside diameter in metres; zero for a solid rod.
    pub inside: f64,
}

impl BeamSection {
    /// Its area in square metres.
    pub fn area(self) -> f64 {
        PI / 4.0 * (self.outside.powi(2) - self.inside.powi(2))
    }

    /// Its second moment of area about a diameter, in metres to the fourth.
    pub fn second_moment(self) -> f64 {
        PI / 64.0 * (self.outside.powi(4) - self.inside.powi(4))
    }
}
