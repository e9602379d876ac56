using System.Text;

namespace Pattress.Server.Api;

/// <summary>The HTTP API: the same documents as the command line's.</summary>
internal static class Endpoints
{
    public const string Addresses = "GET /api/schema, GET /api/demo";

    public static void Map(WebApplication app)
    {
        app.MapGet("/api/schema", () => Json(Questions.Schema, "application/schema+json"));
        app.MapGet("/api/demo", () => Json(Questions.DemoJob));
        app.Map("/api/{**rest}", Refuse);
    }

    // What no other address took: the address is there but for another method, or it is not there.
    private static void Refuse(HttpContext http) => http.Response.StatusCode = IsKnown(http.Request.Path) ? 405 : 404;

    private static bool IsKnown(PathString path) => Addresses.Split(", ").Any(a => a.EndsWith($" {path}", StringComparison.Ordinal));

    private static IResult Json(string json, string type = "application/json") => Results.Text(json, type, Encoding.UTF8);
}
