namespace Pattress.Fixings;

/// <summary>
/// The wall at one hole, under one idea of what the wall is. Distances in mm from the face inwards, each as a spread,
/// so that the fit is tested on what is known and not on one number.
/// </summary>
/// <param name="BuildUp">Fixed id of the build-up.</param>
/// <param name="Behind">What the hole meets behind the face.</param>
/// <param name="Face">Thickness of the face layer: board with skim, laths with plaster, laminate board, tile and all.</param>
/// <param name="Void">Clear depth behind the face (foam counts where a kind opens in it).</param>
/// <param name="MasonryAt">Depth of sound masonry from the face; none where there is none.</param>
/// <param name="SupportDepth">Depth of the stud, joist or lintel behind the face that a screw can use.</param>
/// <param name="SupportClear">Distance from the hole's middle to the nearest side of a support (for wings); none when unknown or far.</param>
/// <param name="Layers">The same from the face inwards, for the drawing.</param>
/// <param name="Base">Base material: <c>gypsum_board</c>, <c>brick</c>, <c>dense_block</c>, <c>aerated_block</c>, <c>concrete</c>, <c>timber</c>, <c>steel</c>, <c>lath_plaster</c>, <c>panel</c>.</param>
public sealed record Spot(
    string BuildUp, Behind Behind, Spread Face, Spread Void, Spread MasonryAt, Spread SupportDepth, Spread SupportClear, string Base,
    IReadOnlyList<Jobs.SectionLayer> Layers)
{
    /// <summary>The timber is a dowel glued into a hole: a screw runs along its grain.</summary>
    public bool AlongGrain { get; init; }
}
