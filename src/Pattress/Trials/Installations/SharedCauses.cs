namespace Pattress.Trials.Installations;

/// <summary>Law of the load that all brackets share.</summary>
public enum LoadLaw
{
    Lognormal,

    /// <summary>Largest values: the yearly or lifetime maximum of a load.</summary>
    Gumbel,
}

/// <summary>Law of a bracket's resistance.</summary>
public enum ResistanceLaw
{
    Lognormal,
    Normal,
}

/// <summary>What all brackets of an installation share, besides the wall they are on.</summary>
/// <param name="LoadLaw">Law of the load factor, whose mean is 1.</param>
/// <param name="LoadCov">Its coefficient of variation, 0 or more.</param>
/// <param name="BatchCov">
/// Coefficient of variation of one lognormal factor (mean 1) on every resistance: the same batch, the same damp, the same fitter.
/// </param>
public readonly record struct SharedCauses(LoadLaw LoadLaw, double LoadCov, double BatchCov = 0)
{
    internal void Check()
    {
        Require(LoadCov, nameof(LoadCov));
        Require(BatchCov, nameof(BatchCov));
    }

    private static void Require(double cov, string name)
    {
        if (!(cov >= 0 && cov <= 10)) throw new ArgumentOutOfRangeException(name, cov, "from 0 to 10");
    }
}

/// <summary>One bracket on one kind of wall.</summary>
/// <param name="MeanResistance">Mean resistance against this action, above 0 (N).</param>
/// <param name="CovResistance">Its own coefficient of variation, 0 or more.</param>
/// <param name="MeanAction">Its share of the mean load, 0 or more (N).</param>
/// <param name="CovAction">Scatter of its share alone (lognormal), 0 or more; with a normal resistance it must be 0.</param>
public readonly record struct BracketOnWall(
    double MeanResistance, double CovResistance, double MeanAction, double CovAction = 0,
    ResistanceLaw Law = ResistanceLaw.Lognormal);
