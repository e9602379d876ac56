using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>The published schema of the job document, made from the shapes that the reader checks.</summary>
public static class JobSchema
{
    /// <summary>JSON Schema, draft 2020-12. What needs more than one field (ids, walls, places) only the reader checks.</summary>
    public static string Text { get; } = SchemaText.Of(JobShapes.Document, "Pattress job, version 1",
        "What a fitter knows of a house and what shall hang in it. Names end in their unit; quantities are numbers in that unit or text with a unit. " +
        "Positions on a wall are measured from its lower left corner as seen from the room (ceilings: from below), x to the right, y up.");
}
