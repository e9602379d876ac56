using Pattress.Actions.Fixtures;
using Pattress.Quantities;

namespace Pattress.Web.Desks;

/// <summary>Dimensions of the fields, for the doors.</summary>
internal static class Dimensions
{
    public static Dimension Of(FieldDimension dimension) => dimension switch
    {
        FieldDimension.Length => Dimension.LengthMm,
        FieldDimension.Mass => Dimension.MassKg,
        FieldDimension.Force => Dimension.ForceN,
        _ => Dimension.Number,
    };
}
