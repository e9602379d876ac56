namespace Pattress.Walls;

/// <summary>One composite build-up: a row of <c>data/walls/build_ups.csv</c>. Lengths in mm, from the face inwards.</summary>
/// <param name="Id">Fixed id, e.g. <c>dabs_brick.12_5_skim</c>.</param>
/// <param name="Family">What readings tell apart by their kind, e.g. <c>dabs</c>.</param>
/// <param name="Kind"><c>wall</c>, <c>ceiling</c>, <c>lintel</c>, <c>reveal</c>, <c>boxing</c> or <c>panel</c>.</param>
/// <param name="BoardMm">One board (or the laths); 0 for plaster straight on masonry.</param>
/// <param name="FrontMm">All boards, skim and insulation together, <paramref name="FrontSdMm"/> its spread.</param>
/// <param name="VoidMm">Clear depth behind the front; 0 where there is none.</param>
/// <param name="Base">Material that the void ends on: <c>none</c>, <c>brick</c>, <c>dense_block</c>, <c>aerated_block</c>, <c>concrete</c>, <c>rubble</c>, <c>clinker_block</c>, <c>hollow_steel</c>, <c>timber</c>, <c>steel</c>.</param>
/// <param name="Support">What holds the board: <c>timber_stud</c>, <c>steel_stud</c>, <c>joist</c>, <c>batten</c>, <c>dab</c> or <c>none</c>.</param>
/// <param name="SupportShare">Share of the face that has a support behind it.</param>
/// <param name="Prior">Share among rows of its kind before anything is known.</param>
public sealed record BuildUp(
    string Id, string Family, string Kind, double BoardMm, int Boards, double SkimMm, double InsulationMm,
    double FrontMm, double FrontSdMm, double VoidMm, double VoidSdMm, double VoidLeastMm, double VoidMostMm,
    string Base, string Support, double SupportWidthMm, double SupportShare, double Prior, string Source)
{
    public bool HasVoid => VoidMm > 0;

    /// <summary>True when masonry, concrete or a lintel stands behind, so that a through-fixing may reach it.</summary>
    public bool HasBase => Base != "none";

    /// <summary>What the bit meets where a support is behind the board.</summary>
    public string SupportMaterial => Support switch { "none" => "void", "steel_stud" => "steel", "dab" => "dab", _ => "timber" };

    /// <summary>Layers from the face: material and thickness, mm; the last is what is behind.</summary>
    public IReadOnlyList<Layer> Layers => [.. AllLayers()];

    private IEnumerable<Layer> AllLayers()
    {
        if (SkimMm > 0) yield return new(Boards == 0 || Family is "lath" or "lath_ceiling" ? "plaster" : "skim", SkimMm);
        for (int i = 0; i < Boards; i++) yield return new(Family is "lath" or "lath_ceiling" ? "laths" : "board", BoardMm);
        if (InsulationMm > 0) yield return new("foam", InsulationMm);
        if (HasVoid) yield return new("void", VoidMm);
        if (HasBase) yield return new(Base, 100);
    }
}

/// <summary>One layer of a build-up.</summary>
public sealed record Layer(string Material, double ThicknessMm);

/// <summary>What lies on top of a build-up: tiles, panelling, a textured coating.</summary>
public sealed record FaceLayer(string Id, double MeanMm, double SdMm, string Source);
